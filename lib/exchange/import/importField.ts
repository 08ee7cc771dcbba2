/** What a column of old jobs can say, in the order in which it is offered; `words` are other headings for it (common practice). */
export const importFields = [
  {
    id: "id",
    label: "Job number",
    words: ["number", "job no", "job", "job id", "ticket", "ticket no", "repair no", "order no", "no", "nr"],
  },
  { id: "title", label: "Title", words: ["heading", "summary", "in short"] },
  { id: "status", label: "Status", words: ["state", "open or closed"] },
  { id: "instrument", label: "Instrument", words: ["horn", "type", "instrument type", "kind", "item"] },
  { id: "maker", label: "Maker", words: ["make", "brand", "manufacturer", "built by"] },
  { id: "model", label: "Model", words: ["model no", "model number"] },
  {
    id: "received",
    label: "Taken in on",
    words: [
      "received",
      "date",
      "date in",
      "in",
      "taken in",
      "day in",
      "came in",
      "date received",
      "arrived",
      "intake",
    ],
  },
  {
    id: "closed",
    label: "Closed on",
    words: [
      "closed",
      "date out",
      "out",
      "finished",
      "finished on",
      "done on",
      "day out",
      "date closed",
      "completed",
      "picked up",
      "collected",
    ],
  },
  {
    id: "complaint",
    label: "Complaint",
    words: [
      "problem",
      "fault",
      "customer says",
      "reported",
      "what is wrong",
      "symptom",
      "description",
      "issue",
      "complaint text",
    ],
  },
  { id: "arrival", label: "State on arrival", words: ["arrival", "condition", "condition in", "old damage"] },
  { id: "cause", label: "Root cause", words: ["cause", "diagnosis", "found", "what it was", "reason"] },
  { id: "part", label: "Troubled part", words: ["part", "where", "which part"] },
  { id: "outcome", label: "Outcome", words: ["result", "how it ended", "ended"] },
  {
    id: "minutes",
    label: "Minutes it took",
    words: ["minutes", "min", "mins", "time", "time spent", "bench time", "labour minutes", "labor minutes"],
  },
  {
    id: "hours",
    label: "Hours it took",
    words: ["hours", "hrs", "labour", "labor", "labour hours", "labor hours", "bench hours"],
  },
  {
    id: "quotedMinutes",
    label: "Minutes quoted",
    words: ["quoted minutes", "estimated minutes", "quoted time"],
  },
  { id: "quotedPrice", label: "Price quoted", words: ["quoted", "quote", "quoted price", "estimate"] },
  {
    id: "charge",
    label: "Charged",
    words: ["charge", "price", "bill", "total", "amount", "cost", "invoiced", "paid"],
  },
  {
    id: "swallowedMinutes",
    label: "Minutes the shop swallowed",
    words: ["swallowed minutes", "unpaid minutes"],
  },
  {
    id: "swallowedMoney",
    label: "Money the shop swallowed",
    words: ["swallowed", "swallowed money", "written off"],
  },
  { id: "lessons", label: "Lessons", words: ["lesson", "learned", "remember"] },
  {
    id: "story",
    label: "Story",
    words: ["notes", "note", "remarks", "comment", "comments", "work done", "what was done", "repair"],
  },
] as const;

/** A field that a column can fill. Each is filled by one column, but for the story, which takes any number. */
export type ImportField = (typeof importFields)[number]["id"];

export const isImportField = (text: string): text is ImportField =>
  importFields.some(({ id }) => id === text);

/** The words by which a field is named on the page and in an exported table. */
export const labelOfField = (field: ImportField) =>
  importFields.find(({ id }) => id === field)?.label ?? field;

/** What each column is taken as, in their order; undefined for one that is left out. */
export type Matching = readonly (ImportField | undefined)[];
