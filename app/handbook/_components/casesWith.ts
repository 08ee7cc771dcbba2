import type { Case } from "@/lib/casebook/caseFile";
import type { Casebook } from "@/lib/casebook/loadCasebook";
import { isBoreStep, isCheckStep, isPlugStep, isRepairStep, isSwapStep } from "@/lib/casebook/step";
import type { Check } from "@/lib/vocabulary/check";

const newestFirst = (a: Case, b: Case) =>
  a.received === b.received ? (a.id < b.id ? 1 : -1) : a.received < b.received ? 1 : -1;

const some = ({ cases }: Casebook, bears: (kase: Case) => boolean) =>
  [...cases.values()].filter(bears).sort(newestFirst);

/** Cases in which a cause was at work, the newest first. */
export const casesWithCause = (casebook: Casebook, id: string) =>
  some(casebook, ({ causes }) => causes.some(({ cause }) => cause === id));

/** Cases in which a check was made, by hand or by what was measured and tried, the newest first. */
export const casesWithCheck = (casebook: Casebook, { id, reads }: Pick<Check, "id" | "reads">) =>
  some(casebook, ({ path }) =>
    path.some((step) => {
      if (isCheckStep(step) && step.check === id) return true;
      switch (reads) {
        case "swap":
          return isSwapStep(step);
        case "ovality":
          return isBoreStep(step);
        case "reduction":
          return isPlugStep(step) && step.reference !== undefined;
        case "clearance":
          return isPlugStep(step) && step.piston !== undefined;
        case "place":
          return (isCheckStep(step) || isSwapStep(step)) && step.where !== undefined;
        case "way":
          return (isCheckStep(step) || isSwapStep(step)) && step.way !== undefined;
        default:
          return false;
      }
    }),
  );

/** Cases in which a repair was done, the newest first. */
export const casesWithRepair = (casebook: Casebook, id: string) =>
  some(casebook, ({ path }) => path.some((step) => isRepairStep(step) && step.repair === id));
