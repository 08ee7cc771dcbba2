/** The places in the head of every page, in the order in which a job passes through them. */
export const placesToGo = [
  { href: "/", label: "Bench" },
  { href: "/sheets", label: "Sheets" },
  { href: "/casebook", label: "Casebook" },
  { href: "/handbook", label: "Handbook" },
  { href: "/gauges", label: "Gauges" },
  { href: "/study", label: "Study" },
  { href: "/patterns", label: "Patterns" },
  { href: "/add", label: "Add a case" },
] as const;
