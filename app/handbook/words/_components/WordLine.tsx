import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { labelOf } from "@/app/_components/labelOf";
import { casebookHref } from "@/app/casebook/_components/casebookQuery";
import type { WordInQuestion } from "@/lib/consult/record/wordsInQuestion";
import { surely } from "@/lib/diagnosis/judgeWord";
import { jeffreysInterval } from "@/lib/estimate/jeffreysInterval";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { WordForm } from "./WordForm";
import styles from "./WordLine.module.css";

type Props = Readonly<{ word: WordInQuestion; vocabulary: Vocabulary; isDeclined: boolean }>;

/** A word that the cases contradict: where it stands, what was seen, and what to do about it. */
export function WordLine({ word: one, vocabulary, isDeclined }: Props) {
  const { cause, check, others, outcome, word, proposed, seen, looked } = one;
  const { low, high } = jeffreysInterval(seen, looked, surely);
  const found = vocabulary.checks.get(check)?.outcomes.find(({ id }) => id === outcome)?.label ?? outcome;
  const title = `${labelOf(vocabulary.checks, check)}${others ? " on the others" : ""}: ${found.toLowerCase()}`;
  return (
    <li className={styles.line}>
      <h3>{title}</h3>
      <p>
        with{" "}
        <Link className={controls.link} href={`/handbook/causes/${cause}`} prefetch={false}>
          {labelOf(vocabulary.causes, cause)}
        </Link>{" "}
        (
        <Link
          className={controls.link}
          href={casebookHref({ words: "", choice: { root: cause } })}
          prefetch={false}
        >
          all its cases
        </Link>
        )
      </p>
      <p>
        The handbook says <b>{word}</b>; seen in{" "}
        <b>
          {seen} of {looked}
        </b>{" "}
        jobs here. That leaves {Math.round(100 * low)} to {Math.round(100 * high)} in 100, and speaks for{" "}
        <b>{proposed}</b>.
      </p>
      <WordForm
        change={{ cause, others, check, outcome, word, proposed }}
        about={`${title}, with ${labelOf(vocabulary.causes, cause)}`}
        isDeclined={isDeclined}
      />
    </li>
  );
}
