import fc from "fast-check";

/** Names of fields that no schema here knows, some of which YAML would read as something else if it let them. */
const unknownName = fc.oneof(
  fc.constantFrom(
    "benchLamp",
    "x",
    "true",
    "null",
    "7",
    "1.5",
    "a: b",
    "- a",
    "# a",
    "'",
    "<<",
    "2024-01-01",
    "",
    "naïve",
  ),
  fc
    .string({ unit: "grapheme", maxLength: 12 })
    .filter((name) => !["__proto__", "constructor", "prototype"].includes(name)),
);

/** Words that trip up writers of YAML as often as plain ones. */
const words = fc.oneof(
  fc.constantFrom(
    "a: b",
    "# none",
    "- x",
    "---",
    "...",
    "yes",
    "null",
    "~",
    "0x1F",
    "1e3",
    ".5",
    "2024-02-31",
    "'",
    '"',
    "{a}",
    "[a]",
    "&a",
    "*a",
    "!!x",
    "%a",
    "@a",
    "`a`",
    "| a",
    "> a",
    "a\nb",
    "a\n---\nb",
    "  a\n b\n",
    "a\n\n\nb",
    "\ta\tb",
    "a\rb",
    "a\u0085b",
    "a\u2028b",
    "\uFEFFa",
    "\u0007",
    "\\n",
    "Ein Käfer 🪲",
  ),
  fc.string({ unit: "grapheme", maxLength: 60 }),
  fc.lorem({ maxCount: 30 }),
);
const proto = new Set(["__proto__", "constructor", "prototype"]);
const unknownValue = fc
  .oneof(words, fc.jsonValue({ maxDepth: 3, noUnicodeString: false }))
  .filter(
    (value) => !JSON.stringify(value, (key, inner) => (proto.has(key) ? "#proto" : inner)).includes("#proto"),
  );
const unknown = fc.dictionary(unknownName, unknownValue, { maxKeys: 3 });

const line = words.filter((text) => [...text.trim()].length >= 3 && text.trim().length <= 80);
const note = fc.option(line, { nil: undefined });
const minutes = fc
  .oneof(fc.nat({ max: 300 }), fc.double({ min: 0, max: 300, noNaN: true }))
  .map((value) => value + 0);
const part = fc.constantFrom("valve 1", "valve", "piston 2", "casing 3", "bell-stem", "other valve");
const length = fc.constantFrom(".6650 in", "16.9 mm", "665", "665.5 thou");
/** Any words as an amount: what was written is kept, whether it can be read or not. */
const amount = (text: string) => [...text.trim()].slice(0, 12).join("").trim() || "40 ml/min";
const lengths = fc.array(length, { maxLength: 4 });

const step = fc.oneof(
  fc.record({
    check: fc.constant("valve-travel"),
    part: fc.option(part, { nil: undefined }),
    found: fc.constantFrom("free", "drags", "hangs"),
    where: fc.option(fc.constantFrom("top", "bottom"), { nil: undefined }),
    minutes,
    note,
  }),
  fc.record({ swap: fc.tuple(part, part), found: fc.constantFrom("free", "drags", "sticks"), minutes, note }),
  fc.record({
    plugs: fc.record({ part, depth: fc.option(length, { nil: undefined }), passes: lengths, stops: lengths }),
    reference: fc.option(fc.record({ part, passes: lengths, stops: lengths }), { nil: undefined }),
    minutes,
    note,
  }),
  fc.record({
    bore: fc.record({
      part,
      readings: fc.array(fc.record({ angle: fc.integer({ min: 0, max: 359 }), diameter: length }), {
        minLength: 1,
        maxLength: 6,
      }),
    }),
    minutes,
    note,
  }),
  fc.record({
    leak: fc.oneof(
      fc.record({ flow: words.map(amount), at: fc.constant("30 mbar") }),
      fc.record({
        volume: fc.constant("450 ml"),
        first: fc.constantFrom("30 mbar", "-12 inH2O"),
        second: fc.constant("18 mbar"),
        after: fc.constant("10 s"),
        sound: fc.option(fc.constant("8 ml/min"), { nil: undefined }),
      }),
    ),
    minutes,
    note,
  }),
  fc.record({
    repair: fc.constantFrom("clean-and-oil", "ease-casing"),
    part: fc.option(part, { nil: undefined }),
    result: fc.constantFrom("fixed", "better", "no-change", "harm"),
    minutes,
    note,
  }),
);

/** Known fields go before unknown ones of the same name, and a step of one kind takes no second kind on. */
const stepNames = [
  "check",
  "swap",
  "plugs",
  "bore",
  "leak",
  "repair",
  "where",
  "way",
  "turned",
  "part",
  "found",
  "result",
  "note",
  "minutes",
];
const extended = fc.tuple(step, unknown).map(([known, more]) => ({
  ...Object.fromEntries(Object.entries(more).filter(([name]) => !stepNames.includes(name))),
  ...known,
}));

const known = fc.record({
  id: fc.stringMatching(/^[a-z0-9]{1,8}(-[a-z0-9]{1,8}){0,2}$/),
  title: line,
  status: fc.constant("open"),
  demo: fc.boolean(),
  instrument: fc.constantFrom("cornet", "euphonium"),
  maker: note,
  model: note,
  received: fc.constantFrom("2024-02-29", "2023-12-31"),
  closed: fc.option(fc.constant("2024-03-01"), { nil: undefined }),
  complaint: line,
  arrival: fc.array(line, { maxLength: 3 }),
  firstThought: fc.option(fc.constant("gummed-oil"), { nil: undefined }),
  photos: fc.option(
    fc.array(
      fc.record(
        {
          file: fc
            .array(fc.constantFrom(..."0123456789abcdef"), { minLength: 32, maxLength: 32 })
            .map((digits) => `${digits.join("")}.jpg`),
          caption: line,
          taken: unknownValue,
        },
        { requiredKeys: ["file"] },
      ),
      { maxLength: 3 },
    ),
    { nil: undefined },
  ),
  plan: fc.option(
    fc.array(
      fc.record({
        repair: fc.constantFrom("clean-and-oil", "ease-casing"),
        part: fc.option(part, { nil: undefined }),
        for: fc.option(fc.constant("gummed-oil"), { nil: undefined }),
        from: fc.option(fc.constant("21-007"), { nil: undefined }),
        seen: fc.option(fc.constant(["valve-travel"]), { nil: undefined }),
        ticked: fc.option(fc.constantFrom([], ["valve-travel"]), { nil: undefined }),
      }),
      { maxLength: 3 },
    ),
    { nil: undefined },
  ),
  path: fc.array(extended, { maxLength: 5 }),
  clock: fc.option(
    fc.record({ minutes, since: fc.option(fc.constant("2024-03-01T08:15:00Z"), { nil: undefined }) }),
    { nil: undefined },
  ),
  causes: fc.array(
    fc.record({
      cause: fc.constantFrom("gummed-oil", "casing-dented"),
      part: fc.option(part, { nil: undefined }),
      role: fc.constantFrom("root", "contributing", "brought-on"),
      note,
    }),
    { maxLength: 3 },
  ),
  outcome: fc.option(fc.constantFrom("fixed", "declined"), { nil: undefined }),
  minutes: fc.option(minutes, { nil: undefined }),
  quoted: fc.option(
    fc.record({
      minutes,
      price: minutes,
      on: fc.option(fc.constant("2024-02-29"), { nil: undefined }),
      p80: fc.option(minutes, { nil: undefined }),
    }),
    { nil: undefined },
  ),
  charge: fc.option(minutes, { nil: undefined }),
  swallowed: fc.option(fc.record({ minutes, money: minutes }), { nil: undefined }),
  harms: fc.array(
    fc.record({
      repair: fc.constant("ease-casing"),
      part: fc.option(part, { nil: undefined }),
      what: line,
      how: note,
      minutes,
      paidBy: fc.constantFrom("shop", "customer"),
    }),
    { maxLength: 2 },
  ),
  like: fc.option(
    fc.array(
      fc.record({
        case: fc.constantFrom("21-007", "22-x"),
        different: note,
        lesson: fc.option(fc.constantFrom("held", "failed"), { nil: undefined }),
      }),
      { maxLength: 3 },
    ),
    { nil: undefined },
  ),
  lessons: fc.array(line, { maxLength: 3 }),
});

/** Front matter that is sound against the small vocabulary, with unknown fields in it and in its steps. */
export const anyFields: fc.Arbitrary<Readonly<Record<string, unknown>>> = fc
  .tuple(known, unknown)
  .map(([fields, more]) => ({ ...more, ...fields }));

/** A story: any text with plain line ends and without a zero byte, which no case file may hold. */
export const anyStory = fc
  .oneof(
    words,
    fc.array(words, { maxLength: 4 }).map((lines) => lines.join("\n")),
    fc.constantFrom("---", "---\na: 1\n---"),
  )
  .map((text) => text.replace(/[\r\0]/g, "").trim());
