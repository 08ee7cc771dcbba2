import type { Case } from "../casebook/caseFile";
import { isCheckStep, isRepairStep } from "../casebook/step";
import type { Vocabulary } from "../vocabulary/vocabulary";

/** A case as the text index sees it: one string a field. */
export type CaseDocument = Readonly<{
  id: string;
  title: string;
  complaint: string;
  story: string;
  lessons: string;
  causes: string;
  parts: string;
  instrument: string;
}>;

/**
 * Lays a case out for the text index; ids become the labels and the synonyms that people search by.
 */
export function caseDocument(kase: Case, vocabulary: Vocabulary): CaseDocument {
  const instrument = vocabulary.instruments.get(kase.instrument);
  const partNames = kase.path.flatMap((step) =>
    isCheckStep(step) || isRepairStep(step) ? (step.part ?? []) : [],
  );
  return {
    id: kase.id,
    title: kase.title,
    complaint: kase.complaint,
    story: kase.story,
    lessons: kase.lessons.join(" "),
    causes: kase.causes.map(({ cause }) => entryWords(vocabulary.causes.get(cause), cause)).join(" "),
    parts: [...new Set(partNames)].join(" "),
    instrument: [entryWords(instrument, kase.instrument), kase.maker, kase.model].filter(Boolean).join(" "),
  };
}

const entryWords = (
  entry: Readonly<{ label: string; synonyms: readonly string[] }> | undefined,
  id: string,
) => (entry ? [entry.label, ...entry.synonyms].join(" ") : id);
