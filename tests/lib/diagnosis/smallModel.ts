import { CauseModel, type CausePrior, type FindingKind } from "@/lib/diagnosis/causeModel";

/** Three causes and three kinds of finding, the second of them telling nothing apart. */
export const smallKinds: readonly FindingKind[] = [
  { key: "travel", outcomes: ["free", "drags", "hangs"], background: [0.6, 0.3, 0.1] },
  { key: "colour", outcomes: ["red", "blue"], background: [0.5, 0.5] },
  { key: "casing", outcomes: ["sound", "dented"], background: [0.85, 0.15] },
];

const tells = (told: Record<string, Record<string, number>>): CausePrior["tellTales"] =>
  new Map(Object.entries(told).map(([key, outcomes]) => [key, new Map(Object.entries(outcomes))]));

/** Causes with 6, 3 and 1 jobs behind them. */
const smallCauses: readonly CausePrior[] = [
  { id: "dirt", jobs: 6, tellTales: tells({ travel: { drags: 0.8 }, casing: { sound: 0.97 } }) },
  { id: "dent", jobs: 3, tellTales: tells({ travel: { hangs: 0.8 }, casing: { dented: 0.8 } }) },
  { id: "wear", jobs: 1, tellTales: tells({ travel: { drags: 0.3, free: 0.6 } }) },
];

export const smallModel = () => new CauseModel(smallCauses, smallKinds);
