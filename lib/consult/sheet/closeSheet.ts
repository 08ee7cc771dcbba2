import { blankStep, type CaseForm, type Fields } from "../../casebook/form/caseForm";
import { wordsIn } from "../../casebook/form/fieldTexts";
import { readCase } from "../../casebook/readCase";
import { writeCase } from "../../casebook/writeCase";
import { listProofs } from "./listProofs";
import { overlayNamed, swallowedOf } from "./overlayNamed";
import type { SentSheet } from "./sentSheet";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** The job as a finished case: ticked proofs join the path, and what is fixed is proven or it is said why not. */
export function closeSheet({ sent, before, form, ground: { reader } }: SheetWish): WishMet {
  const { vocabulary } = reader;
  const now = readCase(writeCase({ ...before, status: "open" }, form.story), "sheet", vocabulary).case;
  const proofs = now ? listProofs({ path: now.path }, vocabulary) : [];
  const ticked = proofs.filter(({ key, standing }) => standing !== "proven" && sent.proofs.includes(key));
  const missing = proofs.filter(({ key, standing }) => standing !== "proven" && !sent.proofs.includes(key));
  const overlaid = overlayNamed(form, sent);
  if (overlaid.outcome === "fixed" && sent.unproven === "") {
    if (missing.length > 0) {
      const open = missing.map(({ check }) => vocabulary.checks.get(check)?.label ?? check).join("; ");
      return refuse(
        "proof",
        `no proof yet of: ${open}`,
        "a tick at each that was done and holds, or say why it is closed without",
      );
    }
    if (proofs.length === 0)
      return refuse(
        "proof",
        "no repair in the path that mended anything",
        "the repair first, or say why it is closed as fixed",
      );
  }
  const steps = ticked.map(({ check, outcome, part }) => ({
    ...blankStep,
    what: `check ${check}`,
    part: part ?? "",
    found: outcome,
  }));
  const closed: CaseForm = { ...overlaid, status: "closed", steps: [...overlaid.steps, ...steps] };
  return {
    form: closed,
    fields: {
      unproven: wordsIn(sent.unproven),
      clock: undefined,
      ...swallowedOf(sent, before),
      ...lookedLikeOf(sent),
    },
  };
}

/** What was said of the cases that this one looked like, a row a case that something was said of. */
function lookedLikeOf({ like, named }: SentSheet): Fields {
  if (![...named].some((name) => name.startsWith("like."))) return {};
  const rows = like.flatMap(({ case: id, different, lesson }) =>
    different === "" && lesson === ""
      ? []
      : [{ case: id, ...(different ? { different } : {}), ...(lesson ? { lesson } : {}) }],
  );
  return { like: rows.length > 0 ? rows : undefined };
}
