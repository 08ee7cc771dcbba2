import styles from "./RiskMark.module.css";
import { riskWord } from "./riskWord";

/** More metal, more at stake: ring, ring with a fingertip, lifted half-disc, wedge to a wall, cut block. */
const silhouettes = [
  <circle key="look" cx="12" cy="12" r="8.5" className={styles.line} />,
  <g key="handle">
    <circle cx="12" cy="12" r="8.5" className={styles.line} />
    <circle cx="12" cy="12" r="4" />
  </g>,
  <g key="open">
    <path d="M3.5 9.2a8.5 7.4 0 0 1 17 0z" />
    <path d="M3.5 14.8a8.5 7.4 0 0 0 17 0z" className={styles.line} />
  </g>,
  <g key="coax">
    <path d="M3 4.5 16 12 3 19.5z" />
    <path d="M18 3h3v18h-3z" />
  </g>,
  <path key="cut" d="M3 3h13.5L8 21H3zM21 21h-9.5L20 3h1z" />,
];

/**
 * What is at stake, as a shape and a word.
 *
 * @param props.riskClass 0 look, 1 handle, 2 take apart, 3 free by coaxing, 4 cannot be undone
 */
export function RiskMark({ riskClass }: Readonly<{ riskClass: number }>) {
  const known = Math.min(4, Math.max(0, Math.trunc(riskClass)));
  return (
    <span className={styles.risk} data-risk={known}>
      <svg viewBox="0 0 24 24" width="22" height="22" aria-hidden="true">
        {silhouettes[known]}
      </svg>
      {riskWord(known)}
    </span>
  );
}
