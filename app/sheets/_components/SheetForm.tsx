"use client";

import { type ReactNode, startTransition, useActionState, useEffect, useRef } from "react";
import { takeSheetOn } from "../actions";
import { isAbout, nothingAsked } from "../sheetAnswer";
import { Conflict } from "./Conflict";
import { keepCopy, markSent, takeCopy } from "./keptCopy";
import styles from "./SheetForm.module.css";
import { TypedContext } from "./TypedContext";

/** The version of a job's file that stands on the page. */
export type SheetVersion = Readonly<{ id: string; text: string; hash: string }>;

/** The line that a form is shut behind; of those that share a name one is open at a time. */
export type Fold = Readonly<{
  summary: ReactNode;
  className?: string | undefined;
  summaryClassName?: string | undefined;
  name?: string;
  isOpen?: boolean;
}>;

type Props = Readonly<{
  sheet: SheetVersion;
  wish: string;
  /** Tells this form from the others on the page. */
  name: string;
  /** Whether the Enter key must not press the first of several buttons, each of which says something else. */
  hasChoices?: boolean;
  className?: string | undefined;
  /** What takes it; default the taking on of a job by its fields alone. */
  act?: typeof takeSheetOn;
  /** Has the form shut behind a line until it is asked for, or was refused. */
  fold?: Fold | undefined;
  children: ReactNode;
}>;

/**
 * A form about an open job. Whatever keeps its wish from being met, what was typed stays: without JavaScript it comes back
 * with the page, with JavaScript it was never gone, and a copy is kept in the browser until it is on disk.
 */
export function SheetForm({
  sheet,
  wish,
  name,
  hasChoices = false,
  className,
  act = takeSheetOn,
  fold,
  children,
}: Props) {
  const [answer, send, isSending] = useActionState(act, nothingAsked);
  const box = useRef<HTMLFormElement>(null);
  const note = useRef<HTMLDivElement>(null);
  const place = `${sheet.id}:${name}`;
  // Once the page shows a later version, what was said of an earlier one no longer holds.
  const { problems, conflict, typed } = isAbout(answer, sheet.hash) ? answer : nothingAsked;

  useEffect(() => {
    if (box.current) takeCopy(box.current, place, sheet.hash);
  }, [place, sheet.hash]);
  useEffect(() => {
    if (answer === nothingAsked) return;
    if (box.current) keepCopy(box.current, place, sheet.hash);
    note.current?.focus();
  }, [answer]);

  function submit(event: React.SubmitEvent<HTMLFormElement>) {
    // Sent by hand, because a form that is sent by its action is emptied afterwards.
    event.preventDefault();
    const data = new FormData(event.currentTarget, event.nativeEvent.submitter);
    markSent(place);
    startTransition(() => send(data));
  }

  const isRefused = problems.length > 0 || conflict !== undefined;
  const form = (
    <form
      ref={box}
      action={send}
      onSubmit={submit}
      onInput={(event) => keepCopy(event.currentTarget, place, sheet.hash)}
      noValidate
      className={className}
      aria-busy={isSending}
    >
      {hasChoices ? (
        <button type="submit" name="step.0.found" value="" className="heard" tabIndex={-1} aria-hidden="true">
          Nothing chosen yet
        </button>
      ) : null}
      <input type="hidden" name="sheet" value={sheet.id} />
      <input type="hidden" name="wish" value={wish} />
      <input type="hidden" name="base" value={conflict ? conflict.theirs : sheet.text} />
      <input type="hidden" name="baseHash" value={conflict ? conflict.theirHash : sheet.hash} />
      <TypedContext key={sheet.hash} value={{ form: name, typed, isRefused }}>
        {children}
      </TypedContext>
      {problems.length > 0 ? (
        <div ref={note} tabIndex={-1} role="alert" className={styles.wrong}>
          {problems.map(({ field, received, expected }) => (
            <p key={`${field} ${received}`}>
              Not saved. {field ? `${field.replaceAll(".", " ")}: f` : "F"}ound {received}; write {expected}.
            </p>
          ))}
        </div>
      ) : null}
      {conflict ? (
        <div ref={note} tabIndex={-1} role="alert">
          <Conflict conflict={conflict} sheet={sheet.id} found={typed["step.0.found"]} />
        </div>
      ) : null}
    </form>
  );
  if (!fold) return form;
  return (
    <details className={fold.className} name={fold.name} open={fold.isOpen === true || isRefused}>
      <summary className={fold.summaryClassName}>{fold.summary}</summary>
      {form}
    </details>
  );
}
