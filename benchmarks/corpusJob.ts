import { formatPartRef } from "@/lib/casebook/partRef";
import type { CheckStep, RepairStep } from "@/lib/casebook/step";
import { frequencyOf } from "@/lib/diagnosis/frequencyWords";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import type { Cause } from "@/lib/vocabulary/cause";
import type { Instrument } from "@/lib/vocabulary/instrument";
import { placesOf } from "@/lib/vocabulary/placesOf";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import type { Frequency } from "@/lib/vocabulary/words";
import type { Random } from "./random";

/** What happened to one instrument: why it came, what was found on the way, what mended it. */
export type CorpusJob = Readonly<{
  cause: Cause;
  instrument: Instrument;
  /** The number of the troubled place; undefined where the instrument does not number its parts. */
  place: number | undefined;
  checks: readonly CheckStep[];
  repair: RepairStep;
}>;

/** How often each kind of cause is met, the ratios of the handbook's own model. */
const jobsOf = { "very common": 12, common: 5, uncommon: 2, rare: 0.8 } as const;
const steps = { least: 5, most: 12 } as const;
/** Share of steps that look at the siblings where the cause says what to find there. Chosen. */
const lookAtOthers = 0.4;

/** Draws a job: a cause by how common it is, an instrument that can have it, findings as often as the handbook says. */
export function drawJob(vocabulary: Vocabulary, random: Random): CorpusJob {
  const cause = must(
    random.weigh([...vocabulary.causes.values()].map((one) => [one, jobsOf[one.howCommon]] as const)),
    "cause",
  );
  const parents = new Set([...vocabulary.instruments.values()].map(({ parent }) => parent));
  const instrument = must(
    random.pick(
      [...vocabulary.instruments.values()].filter(
        ({ id, outside }) =>
          !outside &&
          !parents.has(id) &&
          cause.families.some((family) => vocabulary.instrumentTree.isA(id, family)),
      ),
    ),
    `instrument that can have ${cause.id}`,
  );
  const places = placesOf(vocabulary, instrument.id, "valve");
  const place = places === undefined ? undefined : random.whole(1, places);
  const asked = random
    .shuffle(Object.keys(cause.findings))
    .filter((id) => appliesTo(vocabulary, vocabulary.checks.get(id)?.families ?? [], instrument.id))
    .slice(0, random.whole(steps.least, steps.most));
  const checks = asked.flatMap((id) => {
    const own = drawCheck(id, cause.findings[id] ?? {}, false);
    const others = cause.others[id];
    return others && random.chance(lookAtOthers) ? [...own, ...drawCheck(id, others, true)] : own;
  });
  return { cause, instrument, place, checks, repair: drawRepair() };

  function drawCheck(id: string, told: Readonly<Record<string, Frequency>>, others: boolean): CheckStep[] {
    const found = random.weigh(Object.entries(told).map(([outcome, word]) => [outcome, frequencyOf[word]]));
    const check = vocabulary.checks.get(id);
    if (found === undefined || !check) return [];
    const part = drawPart(check.parts, others);
    return [{ check: id, ...(part ? { part } : {}), found, minutes: Math.ceil(check.minutes) }];
  }

  /** The cause's own part where the work is done on it, else any that the instrument has. */
  function drawPart(among: readonly string[], others: boolean): string | undefined {
    const had = among.filter((id) => {
      const part = vocabulary.parts.get(id);
      return part && appliesTo(vocabulary, part.families, instrument.id) && (!others || part.numbered);
    });
    const part = random.pick(had.filter((id) => cause.parts.includes(id))) ?? random.pick(had);
    if (part === undefined) return undefined;
    const numbered = vocabulary.parts.get(part)?.numbered === true && !others && place !== undefined;
    return formatPartRef({ part, others, ...(numbered ? { place } : {}) });
  }

  function drawRepair(): RepairStep {
    const known = cause.repairs.flatMap((id) => vocabulary.repairs.get(id) ?? []);
    const repair = random.pick(known) ?? must(random.pick([...vocabulary.repairs.values()]), "repair");
    const part = drawPart(repair.parts, false);
    const { low, usual, high } = repair.minutes;
    return {
      repair: repair.id,
      ...(part ? { part } : {}),
      result: "fixed",
      minutes: Math.round(random.chance(0.5) ? random.whole(low, usual) : random.whole(usual, high)),
    };
  }
}

function must<Value>(value: Value | undefined, what: string): Value {
  if (value === undefined) {
    throw new RangeError(`the vocabulary must hold a ${what}; got none; give a vocabulary with entries`);
  }
  return value;
}
