import { type CaseForm, isFilledCause, isFilledStep } from "./caseForm";

/**
 * Names the control of the form in which a field of the front matter is written.
 *
 * @param field dotted way to the field as problems name it: `path.2.found`; rows left empty are not counted in it
 * @returns the control's name, such as `step.3.found`; empty where the form has no control for the field
 */
export function controlOf(field: string, form: Pick<CaseForm, "steps" | "causes">): string {
  const [top = "", second = "", third = ""] = field.split(".");
  switch (top) {
    case "path":
      return inRow("step", filledPlaces(form.steps, isFilledStep), second, stepControls[third] ?? "what");
    case "causes":
      return inRow(
        "cause",
        filledPlaces(form.causes, isFilledCause),
        second,
        causeControls[third] ?? "cause",
      );
    case "quoted":
      return second === "price" ? "quotedPrice" : "quotedMinutes";
    case "":
    case "demo":
    case "firstThought":
    case "harms":
    case "plan":
    case "clock":
    case "like":
    case "swallowed":
      return "";
    default:
      return top;
  }
}

const stepControls: Readonly<Record<string, string>> = {
  part: "part",
  found: "found",
  result: "found",
  where: "where",
  minutes: "minutes",
  note: "note",
};
const causeControls: Readonly<Record<string, string>> = { part: "part", role: "role" };

/** Without a row the list as a whole is meant, which stands under its first control. */
function inRow(list: string, places: readonly number[], at: string, control: string): string {
  const place = at === "" ? 0 : places[Number(at)];
  return place === undefined
    ? ""
    : `${list}.${place}.${at === "" ? "what" : control}`.replace("cause.0.what", "cause.0.cause");
}

function filledPlaces<Row>(rows: readonly Row[], isFilled: (row: Row) => boolean): number[] {
  return rows.flatMap((row, place) => (isFilled(row) ? [place] : []));
}
