"use client";

import { useRouter, useSearchParams } from "next/navigation";
import { useEffect, useState, useTransition } from "react";

const pauseMs = 150;
/** An address that never comes back as sent is not asked for for ever. */
const mostTries = 3;

/**
 * Keeps the search words in the box and in the address in step, whichever changes first.
 *
 * @param words the words that the page was answered for
 * @param path the page that answers
 */
export function useAskedWords(words: string, path: string) {
  const router = useRouter();
  const params = useSearchParams();
  const [text, setText] = useState(words);
  const [seen, setSeen] = useState(words);
  const [sent, setSent] = useState<readonly string[]>([]);
  const [isReading, startReading] = useTransition();

  if (seen !== words) {
    setSeen(words);
    // An echo of what was typed a moment ago leaves the box alone; a link or going back does not.
    if (!sent.includes(words)) setText(words);
    if (!sent.includes(words) || sent.at(-1) === words) setSent([]);
  }

  useEffect(() => {
    if (text === words || (sent.at(-1) === text && isReading)) return;
    if (sent.filter((asked) => asked === text).length >= mostTries) return;
    const timer = setTimeout(() => {
      setSent([...sent, text]);
      const next = new URLSearchParams(params);
      next.delete("q");
      if (text !== "") next.set("q", text);
      const href = next.size > 0 ? `${path}?${next}` : path;
      // Without a connection the words are kept in the address, and asked for when the page is next loaded.
      if (!navigator.onLine) window.history.replaceState(null, "", href);
      else startReading(() => router.replace(href, { scroll: false }));
    }, pauseMs);
    return () => clearTimeout(timer);
  });

  return { text, setText, isReading };
}
