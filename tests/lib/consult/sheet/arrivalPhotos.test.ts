import { expect, it } from "vitest";
import { readCase } from "@/lib/casebook/readCase";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { buildReader } from "@/lib/reading/reader";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const reader = buildReader(smallVocabulary);
const [a, b, c] = ["a", "b", "c"].map((digit) => `${digit.repeat(32)}.jpg`);
const { id, text: fresh } = newSheet(
  { instrument: "cornet", complaint: "Third valve hangs." },
  smallVocabulary,
  [],
  "2026-11-25",
);

function ask(base: string, entries: Readonly<Record<string, string>>, photos: readonly string[] = []) {
  const sent = readSentSheet(Object.entries({ sheet: id, base, ...entries }));
  return changeSheet(sent, {
    reader,
    nowMs: 0,
    caseOf: () => undefined,
    photos,
    hasPhoto: (file) => file === a || file === b,
  });
}
function asked(base: string, entries: Readonly<Record<string, string>>, photos: readonly string[] = []) {
  const changed = ask(base, entries, photos);
  if (changed.text === undefined) throw new Error(JSON.stringify(changed.problems));
  expect(readCase(changed.text, "a.md", smallVocabulary).problems).toEqual([]);
  return changed.text;
}
const photosOf = (text: string) => readCase(text, "a.md", smallVocabulary).case?.photos;
const photo = (file: string | undefined, caption?: string) => ({ file, ...(caption ? { caption } : {}) });

const two = asked(fresh, { wish: "photos", caption: " The bow " }, [a ?? "", b ?? ""]);

it("photos stand on a line each, with what they show; one that is there is not added twice", () => {
  expect(two).toContain(
    `photos:\n  - { file: ${a}, caption: The bow }\n  - { file: ${b}, caption: The bow }\n`,
  );
  expect(photosOf(asked(two, { wish: "photos" }, [b ?? "", c ?? ""]))).toEqual([
    photo(a, "The bow"),
    photo(b, "The bow"),
    photo(c),
  ]);
  expect(ask(two, { wish: "photos" }, [b ?? ""]).problems[0]?.received).toBe(
    "only photos that the sheet has already",
  );
});

it("what a photo shows is said anew, or no longer said; the others stay as they were", () => {
  const anew = asked(two, { wish: "caption", photo: b ?? "", caption: "A dent in the bell" });
  expect(photosOf(anew)).toEqual([photo(a, "The bow"), photo(b, "A dent in the bell")]);
  expect(photosOf(asked(anew, { wish: "caption", photo: b ?? "", caption: " " }))).toEqual([
    photo(a, "The bow"),
    photo(b),
  ]);
});

it("a photo is taken off and put back where it stood, and the file is to the letter what it was", () => {
  const off = asked(two, { wish: "photo-off", photo: a ?? "" });
  expect(photosOf(off)).toEqual([photo(b, "The bow")]);
  expect(asked(off, { wish: "photo-back", photo: a ?? "", caption: "The bow", at: "0" })).toBe(two);
  expect(asked(asked(off, { wish: "photo-off", photo: b ?? "" }), { wish: "edit" })).toBe(fresh);
});

it.each([
  [{ wish: "photo-back", photo: c ?? "" }, "file is not there"],
  [{ wish: "photo-back", photo: a ?? "" }, "has already"],
  [{ wish: "photo-off", photo: c ?? "" }, "does not have"],
  [{ wish: "photo-off", photo: "../../x.jpg" }, "does not have"],
  [{ wish: "caption", photo: "" }, "does not have"],
  [{ wish: "photos" }, "has already"],
])("%j is refused in words", (entries, words) => {
  expect(ask(two, entries).problems[0]?.received).toContain(words);
});
