import type { SettledWord } from "@/app/_data/settleWord";

type Went = Readonly<{ title: string; words: string; tone: "plain" | "warn" | "fail" }>;

/** What is said of each way in which a decision about a word can go. */
const wentWords: Readonly<Record<SettledWord, Went>> = {
  taken: {
    title: "The word is in the handbook.",
    words: "Only this word was changed in its file. From now on causes are weighed by it.",
    tone: "plain",
  },
  declined: {
    title: "The word stays.",
    words: "It is not asked about again unless the cases come to speak for yet another word.",
    tone: "plain",
  },
  moved: {
    title: "Another word stands there by now.",
    words: "Nothing was changed. Below stands what the handbook says now.",
    tone: "warn",
  },
  busy: {
    title: "Somebody else was writing to that file.",
    words: "Nothing was changed. Look once more and decide again.",
    tone: "warn",
  },
  broken: {
    title: "The list of words that stay cannot be read.",
    words: "Nothing was changed. Mend declined-words.yaml in the content folder, then decide again.",
    tone: "fail",
  },
  shipped: {
    title: "This handbook came with Benchlore.",
    words:
      "Nothing was changed. Copy its vocabulary folder into your own content folder; then its words are yours to change.",
    tone: "warn",
  },
  disk: {
    title: "The file could not be written.",
    words: "Nothing was changed. Make room on the disk and get leave to write there, then decide again.",
    tone: "fail",
  },
};

const isWent = (value: unknown): value is SettledWord => typeof value === "string" && value in wentWords;

/** What is said of a decision that the address tells of; undefined where it tells of none. */
export const readWent = (value: unknown): Went | undefined => (isWent(value) ? wentWords[value] : undefined);
