"use client";

import { type RefObject, useEffect, useState } from "react";
import { blankCause, blankStep, type CauseRow, type StepRow } from "@/lib/casebook/form/caseForm";
import { readSentCase, type SentCase } from "@/lib/casebook/form/sentCase";
import type { Draft, DraftProblem } from "@/lib/consult/writeUp/draftCase";
import { checkWriteUp } from "../actions";
import { forgetDraft, keepDraft, keptDraft } from "./keptDraft";

/** Long enough not to ask at every letter. */
const pauseMs = 350;
const moreRows = 4;

type TextField = Exclude<keyof Draft["form"], "steps" | "causes">;

const placeHere = () => window.location.search;
const entriesOf = (form: HTMLFormElement) =>
  [...new FormData(form)].flatMap(([name, value]) =>
    typeof value === "string" ? [[name, value.replaceAll("\r\n", "\n")] satisfies [string, string]] : [],
  );

const isTypedIn = (form: HTMLFormElement) =>
  [...form.elements].some((control) =>
    control instanceof HTMLSelectElement
      ? [...control.options].some((option) => option.selected !== option.defaultSelected)
      : (control instanceof HTMLInputElement || control instanceof HTMLTextAreaElement) &&
        control.value !== control.defaultValue,
  );

/**
 * Holds a write-up while it is typed: keeps a copy in the browser, asks what is wrong as one types, and takes over what
 * the server answered.
 *
 * @param answer the draft as the server last gave it; a new one takes the place of what is shown
 * @param box the form element, whose fields are what is sent, checked and kept
 */
export function useDraft(answer: Draft, box: RefObject<HTMLFormElement | null>) {
  const [draft, setDraft] = useState(answer);
  const [seen, setSeen] = useState(answer);
  const [problems, setProblems] = useState<readonly DraftProblem[]>(answer.problems);
  const [touched, setTouched] = useState<ReadonlySet<string>>(new Set());
  const [isDirty, setIsDirty] = useState(false);
  const [broughtBack, setBroughtBack] = useState(false);

  if (seen !== answer) {
    setSeen(answer);
    setDraft(answer);
    setProblems(answer.problems);
    setIsDirty(true);
  }

  function takeOver(kept: SentCase) {
    const { view, form, base, text } = kept;
    setDraft((before) => ({ ...before, view, form, base, text }));
    setIsDirty(true);
  }

  useEffect(() => {
    if (!box.current) return;
    const kept = keptDraft(placeHere());
    // What was typed before the page had woken up goes before a copy from an earlier visit.
    if (isTypedIn(box.current)) {
      takeOver(readSentCase(entriesOf(box.current)));
    } else if (kept && !answer.asked) {
      takeOver(kept);
      setBroughtBack(true);
    }
  }, []);

  useEffect(() => {
    if (!isDirty || !box.current) return;
    const form = box.current;
    keepDraft(placeHere(), entriesOf(form));
    let isStale = false;
    const timer = setTimeout(async () => {
      const found = await checkWriteUp(new FormData(form)).catch(() => undefined);
      // Without a connection nothing can be checked; what was typed is kept all the same.
      if (found && !isStale) setProblems(found);
    }, pauseMs);
    return () => {
      isStale = true;
      clearTimeout(timer);
    };
  }, [draft.form, draft.text, draft.view, isDirty]);

  function touch(name: string) {
    setIsDirty(true);
    if (!touched.has(name)) setTouched(new Set([...touched, name]));
  }
  const rows = <Row extends object>(list: readonly Row[], at: number, change: Partial<Row>) =>
    list.map((row, place) => (place === at ? { ...row, ...change } : row));

  return {
    draft,
    problems,
    broughtBack,
    /** The problem to show at a control: all of them once asked, before that only where somebody has been. */
    problemAt: (control: string) =>
      draft.asked || touched.has(control)
        ? problems.find((problem) => problem.control === control)
        : undefined,
    setText(text: string) {
      touch("text");
      setDraft({ ...draft, text });
    },
    setField(name: TextField, text: string) {
      touch(name);
      setDraft({ ...draft, form: { ...draft.form, [name]: text } });
    },
    setStep(at: number, change: Partial<StepRow>) {
      for (const field of Object.keys(change)) touch(`step.${at}.${field}`);
      const steps = rows(draft.form.steps, at, change);
      setDraft({ ...draft, form: { ...draft.form, steps } });
    },
    setCause(at: number, change: Partial<CauseRow>) {
      for (const field of Object.keys(change)) touch(`cause.${at}.${field}`);
      const causes = rows(draft.form.causes, at, change);
      setDraft({ ...draft, form: { ...draft.form, causes } });
    },
    addSteps() {
      const steps = [...draft.form.steps, ...Array(moreRows).fill(blankStep)];
      setDraft({ ...draft, form: { ...draft.form, steps } });
    },
    addCauses() {
      setDraft({ ...draft, form: { ...draft.form, causes: [...draft.form.causes, blankCause] } });
    },
    moveStepUp(at: number) {
      const steps = [...draft.form.steps];
      steps.splice(at - 1, 2, ...steps.slice(at - 1, at + 1).reverse());
      setIsDirty(true);
      setDraft({ ...draft, form: { ...draft.form, steps } });
    },
    takeOutStep(at: number) {
      setIsDirty(true);
      setDraft({
        ...draft,
        form: { ...draft.form, steps: draft.form.steps.filter((_, place) => place !== at) },
      });
    },
    startAfresh(fresh: Draft) {
      forgetDraft(placeHere());
      setDraft(fresh);
      setProblems([]);
      setTouched(new Set());
      setIsDirty(false);
      setBroughtBack(false);
    },
  };
}
