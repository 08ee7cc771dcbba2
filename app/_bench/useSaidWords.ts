"use client";

import { useRouter, useSearchParams } from "next/navigation";
import { useEffect, useRef, useState, useSyncExternalStore, useTransition } from "react";
import { closePiece } from "./closePiece";
import { findTap } from "./findTap";

/** Long enough not to ask at every letter, short enough to feel answered as one types. */
const pauseMs = 150;
/** An address that never comes back as sent is not asked for for ever. */
const mostTries = 3;

/**
 * Keeps the words in the box and the words in the address in step, whichever changes first, and loses neither a word
 * nor a tap when both come at once.
 *
 * @param says the words that the page was answered for
 * @returns the words in the box, ways to change them and the instrument, and what is going on
 */
export function useSaidWords(says: string) {
  const router = useRouter();
  const params = useSearchParams();
  const [text, setText] = useState(says);
  const [seen, setSeen] = useState(says);
  const [sent, setSent] = useState<readonly string[]>([]);
  const [isReading, startReading] = useTransition();
  const asked = useRef("");
  const isOnline = useSyncExternalStore(watchConnection, isConnected, () => true);

  if (seen !== says) {
    setSeen(says);
    // An echo of what was typed a moment ago leaves the box alone; a link or going back does not.
    if (!sent.includes(says)) setText(says);
    if (!sent.includes(says) || sent.at(-1) === says) setSent([]);
  }

  function ask(search: URLSearchParams, how: "push" | "replace") {
    asked.current = search.toString();
    const href = search.size > 0 ? `/?${search}` : "/";
    // Without a connection what was said and tapped is still kept in the address; it is read when it is back.
    if (!navigator.onLine) window.history.replaceState(null, "", href);
    else startReading(() => router[how](href, { scroll: false }));
  }

  function change(key: "says" | "instrument", value: string) {
    // While an address is on its way, the next change builds on that one.
    const next = new URLSearchParams(isReading ? asked.current : params);
    next.delete(key);
    // A plan is made for what stood there before, and would have to be made anew at every word.
    next.delete("plan");
    if (value !== "") next.append(key, value);
    ask(next, "replace");
  }

  useEffect(() => {
    if (text === says) return;
    if (sent.at(-1) === text && (isReading || !isOnline)) return;
    if (isOnline && sent.filter((words) => words === text).length >= mostTries) return;
    const timer = setTimeout(() => {
      setSent([...sent, text]);
      change("says", text);
    }, pauseMs);
    return () => clearTimeout(timer);
  });

  // A tapped link was written before the newest words were: it is followed with them in it.
  useEffect(() => {
    const follow = (event: MouseEvent) => {
      const search = findTap(event);
      if (!search) return;
      event.preventDefault();
      event.stopPropagation();
      closePiece(event.target);
      search.delete("says");
      if (text !== "") search.append("says", text);
      if (text !== says) setSent([...sent, text]);
      ask(search, "push");
    };
    window.addEventListener("click", follow, { capture: true });
    return () => window.removeEventListener("click", follow, { capture: true });
  });

  return { text, setText, chooseInstrument: (id: string) => change("instrument", id), isReading, isOnline };
}

const isConnected = () => navigator.onLine;

function watchConnection(changed: () => void) {
  window.addEventListener("online", changed);
  window.addEventListener("offline", changed);
  return () => {
    window.removeEventListener("online", changed);
    window.removeEventListener("offline", changed);
  };
}
