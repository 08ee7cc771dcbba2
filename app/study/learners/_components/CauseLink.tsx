import Link from "next/link";
import { labelOf } from "@/app/_components/labelOf";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./LearnerTables.module.css";

type Props = Readonly<{ id: string; vocabulary: Vocabulary; toBuild?: boolean }>;

/** A cause that leads to its page in the handbook, and where it is taught to a lesson about it. */
export const CauseLink = ({ id, vocabulary, toBuild = false }: Props) => (
  <span className={styles.cause}>
    <Link href={`/handbook/causes/${id}`} prefetch={false}>
      {labelOf(vocabulary.causes, id)}
    </Link>
    {toBuild ? (
      <a className="small unprinted" href={`/study/lessons/build?cause=${id}`}>
        Build a lesson<span className="heard"> about {labelOf(vocabulary.causes, id)}</span>
      </a>
    ) : null}
  </span>
);
