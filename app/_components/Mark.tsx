/** The mark: a piston seen from its end, held between two jaws. */
export function Mark() {
  return (
    <svg viewBox="0 0 32 32" width="30" height="30" aria-hidden="true">
      <path d="M3 3h9v4H7v18h5v4H3zM29 3h-9v4h5v18h-5v4h9z" fill="currentColor" />
      <circle cx="16" cy="16" r="6.2" fill="none" stroke="var(--brass)" strokeWidth="3.4" />
    </svg>
  );
}
