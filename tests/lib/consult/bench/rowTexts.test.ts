import fc from "fast-check";
import { expect, it } from "vitest";
import { type Bench, buildBench, takeInCase } from "@/lib/consult/bench/bench";
import { smallVocabulary } from "../../reading/smallVocabulary";
import { smallCase, smallCasebook, smallCases } from "../smallCasebook";

const wrongRows = ({ table, text: { words }, rowTexts }: Bench) =>
  [...table.rowOfId].filter(([id, row]) => rowTexts.numbers[row] !== words.numberOf.get(id));

it("every row's text is found under its own number, whatever comes in, is closed, opened again or changed", () => {
  const coming = fc.record({
    id: fc.constantFrom("1-1", "1-2", "7-1", "7-2", "7-3"),
    isOpen: fc.boolean(),
    complaint: fc.constantFrom("Valve hangs.", "Smells of old oil.", "Kicked across the pitch."),
  });
  fc.assert(
    fc.property(fc.array(coming, { maxLength: 12 }), (comings) => {
      const bench = buildBench(smallVocabulary, smallCasebook(smallCases));
      expect(wrongRows(bench)).toEqual([]);
      for (const { id, isOpen, complaint } of comings) {
        const kase = smallCase(id, { complaint, causes: [{ cause: "dent", role: "root" }] });
        takeInCase(bench, { ...kase, status: isOpen ? "open" : "closed" });
      }
      expect(wrongRows(bench)).toEqual([]);
      expect(bench.rowTexts.rowCount).toBe(bench.table.rowCount);
    }),
    { numRuns: 25 },
  );
});
