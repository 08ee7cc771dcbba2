/** Closes the piece in which a tap was made and gives the focus back to it: the links inside are gone once it is shut. */
export function closePiece(target: EventTarget | null): void {
  const piece = target instanceof Element ? target.closest("details") : null;
  if (!piece) return;
  piece.open = false;
  piece.querySelector("summary")?.focus();
}
