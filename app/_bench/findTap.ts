/**
 * The bench that a click asks for, when it is a plain click on a link marked `data-tap`.
 *
 * @returns the search part of the link's address, or undefined when the click is none of ours
 */
export function findTap(event: MouseEvent): URLSearchParams | undefined {
  const { target, button, metaKey, ctrlKey, shiftKey, altKey } = event;
  if (button !== 0 || metaKey || ctrlKey || shiftKey || altKey || !(target instanceof Element))
    return undefined;
  const href = target.closest("a[data-tap]")?.getAttribute("href");
  return href ? new URL(href, window.location.href).searchParams : undefined;
}
