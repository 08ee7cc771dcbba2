import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { More } from "@/app/_components/More";
import { Section } from "@/app/_components/Section";
import { StateNote } from "@/app/_components/StateNote";
import { getDeclinedWords } from "@/app/_data/settleWord";
import { getShop } from "@/app/_data/shop";
import { type WordInQuestion, wordsOfCasebook } from "@/lib/consult/record/wordsInQuestion";
import { leastCases } from "@/lib/diagnosis/judgeWord";
import { formatProblem } from "@/lib/document/contentProblem";
import { isSameChange } from "@/lib/vocabulary/wordChange";
import styles from "../_components/Entry.module.css";
import { EntryHead } from "../_components/EntryHead";
import { WordLine } from "./_components/WordLine";
import { readWent } from "./_components/wentWords";

export const metadata: Metadata = { title: "Words that the cases contradict" };

type Props = Readonly<{ searchParams: Promise<Readonly<Record<string, unknown>>> }>;

/** As many as one decides in a sitting. */
const shownFirst = 20;

/** The handbook's words beside the cases: where they are clearly off, the owner decides which word stands. */
export default async function WordsPage({ searchParams }: Props) {
  const went = readWent((await searchParams).went);
  const { casebook, vocabulary } = await getShop();
  const { declined, problems } = await getDeclinedWords();
  const { off, judged, told } = wordsOfCasebook(casebook, vocabulary);
  const isDeclined = (word: WordInQuestion) => declined.some((one) => isSameChange(one, pick(word)));
  const asked = off.filter((word) => !isDeclined(word));
  const kept = off.filter(isDeclined);
  const lines = (words: readonly WordInQuestion[], areDeclined: boolean) => (
    <ul>
      {words.map((word) => (
        <WordLine
          key={`${word.cause} ${word.check} ${word.others} ${word.outcome}`}
          word={word}
          vocabulary={vocabulary}
          isDeclined={areDeclined}
        />
      ))}
    </ul>
  );
  return (
    <main className="page" id="main">
      <EntryHead kind="Words" anchor="causes" title="Words that the cases contradict" synonyms={[]}>
        <span>
          {judged.toLocaleString("en-GB")} of the handbook&apos;s {told.toLocaleString("en-GB")} words have{" "}
          {leastCases} cases or more to say about them
        </span>
        <span>{off.length === 1 ? "1 is" : `${off.length} are`} clearly off</span>
      </EntryHead>
      {went ? (
        <StateNote title={went.title} tone={went.tone} level={2}>
          <p>{went.words}</p>
        </StateNote>
      ) : null}
      {problems.length > 0 ? (
        <StateNote title="The list of words that stay cannot be read." tone="fail" level={2}>
          <p>{problems.map(formatProblem).join(". ")}</p>
        </StateNote>
      ) : null}
      <Section title="To be decided" aside="those with the most cases first">
        {asked.length === 0 ? (
          <p className={styles.prose}>
            {judged === 0
              ? `No finding has been looked for in ${leastCases} jobs with the same root cause yet. Each word shows its cases on the page of its cause all the same.`
              : "No word is clearly off."}
          </p>
        ) : null}
        {lines(asked.slice(0, shownFirst), false)}
        <More count={asked.length - shownFirst} of="word">
          {lines(asked.slice(shownFirst), false)}
        </More>
        {kept.length > 0 ? (
          <details>
            <summary className={controls.opens}>
              {kept.length} {kept.length === 1 ? "word stays" : "words stay"}, as decided
            </summary>
            {lines(kept, true)}
          </details>
        ) : null}
      </Section>
      <Section title="How this is judged">
        <p className={styles.prose}>
          Every word stands for a range of shares, half way to the next word on either side. The finished jobs
          with the root cause in which the check was made give the share seen, and with it a range that holds
          the true share 99 times in 100 (Jeffreys). Where the two ranges do not meet the word is clearly off;
          proposed is the word in whose range the share seen lies, half a job added on either side. Where the
          true share is the word&apos;s own number this goes wrong less than four times in a thousand; at the
          very edge of its range up to twenty times.
        </p>
        <p className={styles.prose}>
          Mind that a check is made where something is suspected. The cases tell how it falls out then, not on
          every instrument; and what one shop sees need not be so in another.
        </p>
        <p>
          <Link href="/patterns" prefetch={false}>
            Patterns across the shop
          </Link>
        </p>
      </Section>
    </main>
  );
}

const pick = ({ cause, others, check, outcome, word, proposed }: WordInQuestion) => ({
  cause,
  others,
  check,
  outcome,
  word,
  proposed,
});
