import controls from "../_components/controls.module.css";
import { BenchLink } from "./BenchLink";
import type { BenchQuery } from "./benchQuery";
import { setFinding } from "./editBench";
import type { PistonView } from "./pistonView";
import styles from "./ValveSection.module.css";

/** Which way it catches: for the valve that is marked, or for none in particular while none is. */
export function WayChoice({ bench, view }: Readonly<{ bench: BenchQuery; view: PistonView }>) {
  const { wayCheck, way, marks, valve } = view;
  if (!wayCheck) return null;
  const part = marks[0] ? `${valve} ${marks[0].valve}` : null;
  return (
    <nav className={styles.way} aria-label={wayCheck.question}>
      <span className={controls.either}>
        {wayCheck.outcomes.map(({ id, label }) => (
          <BenchLink
            key={id}
            to={setFinding(bench, { check: wayCheck.id, outcome: id, part })}
            current={way?.id === id}
          >
            {label}
          </BenchLink>
        ))}
      </span>
    </nav>
  );
}
