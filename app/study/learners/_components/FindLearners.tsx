import controls from "@/app/_components/controls.module.css";
import styles from "./LearnerTables.module.css";
import { type LearnersQuery, learnersHref, orders } from "./learnersQuery";

const orderOf = (word: string): LearnersQuery["order"] =>
  word === "need" || word === "due" || word === "last" ? word : "name";

/** Finds learners by name, and says in which order they stand. */
export function FindLearners({ query }: Readonly<{ query: LearnersQuery }>) {
  return (
    <div className={`${styles.find} unprinted`}>
      <form action="/study/learners" method="get" role="search" className={styles.find}>
        <label htmlFor="find">Name</label>
        <input
          id="find"
          name="find"
          type="search"
          defaultValue={query.find}
          className={controls.field}
          autoComplete="off"
        />
        <input type="hidden" name="order" value={query.order} />
        <button type="submit" className={controls.plain}>
          Find
        </button>
      </form>
      <nav aria-label="Order" className={controls.row}>
        {Object.entries(orders).map(([word, { label }]) => (
          <a
            key={word}
            className={controls.plain}
            aria-current={word === query.order ? "true" : undefined}
            href={learnersHref({ ...query, order: orderOf(word), page: 1 })}
          >
            {label}
          </a>
        ))}
      </nav>
    </div>
  );
}
