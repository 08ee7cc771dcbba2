import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative } from "node:path";
import { z } from "zod";
import type { ContentProblem } from "../document/contentProblem";
import { explainIssues } from "../document/explainIssues";
import { readYaml } from "../document/readYaml";
import { buildTaxonomy, IMPLICIT_ROOT } from "../similarity/taxonomy";
import { type Cause, causeSchema } from "./cause";
import { type CauseNotes, causeNotesSchema } from "./causeNotes";
import { type Caution, cautionSchema } from "./caution";
import { type Check, checkSchema } from "./check";
import { findBrokenReferences } from "./findBrokenReferences";
import { type Instrument, instrumentSchema } from "./instrument";
import { leaveOutBroken } from "./leaveOutBroken";
import { opinionWeightsSchema } from "./opinionWeights";
import { type Part, partSchema } from "./part";
import { readingWeightsSchema } from "./readingWeights";
import { readingWordsSchema } from "./readingWords";
import { type Repair, repairSchema } from "./repair";
import { rootUnplaced } from "./rootUnplaced";
import { type Saying, sayingSchema } from "./saying";
import type { Vocabulary } from "./vocabulary";

/** A vocabulary with what could not be read of it; broken entries are left out and never hide the good ones. */
export type VocabularyReading = Readonly<{ vocabulary: Vocabulary; problems: readonly ContentProblem[] }>;

/** The folders of the vocabulary whose YAML files are lists of entries. */
export const entryFolders = ["checks", "causes", "repairs", "sayings", "notes"] as const;

/**
 * Loads the vocabulary from its folder: `instruments.yaml`, `parts.yaml`, `cautions.yaml`, `reading.yaml`, `weights.yaml` and
 * `readingWeights.yaml` where there are such, and every YAML file under `checks/`, `causes/`, `repairs/`, `sayings/` and `notes/`. Each of
 * these is a list of entries, each entry checked on its own.
 *
 * @param folder the vocabulary folder
 */
export function loadVocabulary(folder: string): VocabularyReading {
  const problems: ContentProblem[] = [];
  const entries = <Entry extends { id: string }>(place: string, schema: z.ZodType<Entry>) => {
    const found = new Map<string, Entry>();
    for (const file of yamlFiles(folder, place)) {
      for (const { entry, lineOf } of readEntries(folder, file, schema, problems)) {
        if (found.has(entry.id)) {
          problems.push({
            file,
            line: lineOf([]),
            field: "id",
            received: `'${entry.id}' a second time`,
            expected: "another id",
          });
        } else found.set(entry.id, entry);
      }
    }
    return found;
  };
  const unnamed = <Entry>(place: string, schema: z.ZodType<Entry>) =>
    yamlFiles(folder, place).flatMap((file) =>
      readEntries(folder, file, schema, problems).map(({ entry }) => entry),
    );
  const inTree = <Entry extends { id: string; parent?: string }>(file: string, schema: z.ZodType<Entry>) =>
    rootUnplaced(entries<Entry>(file, schema), file, problems);
  const learned = <Weights>(file: string, schema: z.ZodType<Weights>) =>
    existsSync(join(folder, file)) ? readWhole(folder, file, schema, problems) : schema.parse({});
  const instruments = inTree<Instrument>("instruments.yaml", instrumentSchema);
  const parts = inTree<Part>("parts.yaml", partSchema);
  const vocabulary: Vocabulary = {
    instruments,
    parts,
    checks: entries<Check>("checks", checkSchema),
    causes: entries<Cause>("causes", causeSchema),
    repairs: entries<Repair>("repairs", repairSchema),
    cautions: entries<Caution>("cautions.yaml", cautionSchema),
    words: readWhole(folder, "reading.yaml", readingWordsSchema, problems),
    sayings: unnamed<Saying>("sayings", sayingSchema),
    causeNotes: byCause(unnamed<CauseNotes>("notes", causeNotesSchema)),
    weights: learned("weights.yaml", opinionWeightsSchema),
    readingWeights: learned("readingWeights.yaml", readingWeightsSchema),
    instrumentTree: treeOf(instruments),
    partTree: treeOf(parts),
  };
  problems.push(...findBrokenReferences(vocabulary));
  return { vocabulary: leaveOutBroken(vocabulary), problems };
}

/** All notes of each cause, in the order of the files. */
function byCause(entries: readonly CauseNotes[]): Map<string, string[]> {
  const notesOf = new Map<string, string[]>();
  for (const { cause, notes } of entries) notesOf.set(cause, [...(notesOf.get(cause) ?? []), ...notes]);
  return notesOf;
}

/** The tree of some entries; of none it is a bare root. */
const treeOf = (entries: ReadonlyMap<string, Readonly<{ id: string; parent?: string }>>) =>
  buildTaxonomy(entries.size > 0 ? [...entries.values()] : [{ id: IMPLICIT_ROOT }]);

function yamlFiles(folder: string, place: string): string[] {
  if (place.endsWith(".yaml")) return [place];
  const inside = join(folder, place);
  if (!existsSync(inside)) return [];
  return readdirSync(inside)
    .filter((name) => name.endsWith(".yaml"))
    .sort()
    .map((name) => join(place, name));
}

function readFile(folder: string, file: string, problems: ContentProblem[]) {
  const path = join(folder, file);
  if (!existsSync(path)) {
    problems.push({
      file,
      line: 0,
      field: "",
      received: "no such file",
      expected: `it under ${relative(".", folder)}`,
    });
    return undefined;
  }
  const reading = readYaml(readFileSync(path, "utf8"), file);
  problems.push(...reading.problems);
  return reading.problems.length > 0 ? undefined : reading;
}

function readEntries<Entry>(
  folder: string,
  file: string,
  schema: z.ZodType<Entry>,
  problems: ContentProblem[],
) {
  const reading = readFile(folder, file, problems);
  if (!reading) return [];
  const list = z.array(z.unknown()).safeParse(reading.data ?? []);
  if (!list.success) {
    problems.push(...explainIssues(list.error.issues, reading.data, { file, lineOf: reading.lineOf }));
    return [];
  }
  return list.data.flatMap((data, index) => {
    const lineOf = (path: readonly PropertyKey[]) => reading.lineOf([index, ...path]);
    const parsed = schema.safeParse(data);
    if (parsed.success) return [{ entry: parsed.data, lineOf }];
    problems.push(...explainIssues(parsed.error.issues, data, { file, lineOf }));
    return [];
  });
}

/** A file that is one entry; where it cannot be read everything in it takes its default. */
function readWhole<Whole>(
  folder: string,
  file: string,
  schema: z.ZodType<Whole>,
  problems: ContentProblem[],
): Whole {
  const reading = readFile(folder, file, problems);
  const parsed = schema.safeParse(reading?.data ?? {});
  if (parsed.success) return parsed.data;
  problems.push(
    ...explainIssues(parsed.error.issues, reading?.data, { file, lineOf: reading?.lineOf ?? (() => 0) }),
  );
  return schema.parse({});
}
