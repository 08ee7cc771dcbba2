"use client";

import { startTransition, useActionState, useEffect, useRef, useSyncExternalStore } from "react";
import controls from "@/app/_components/controls.module.css";
import type { Draft } from "@/lib/consult/writeUp/draftCase";
import { writeUp } from "../actions";
import type { Choices } from "./choices";
import { FormView } from "./FormView";
import { ProblemList } from "./ProblemList";
import { TextView } from "./TextView";
import { useDraft } from "./useDraft";
import styles from "./WriteUp.module.css";

const views = [
  { view: "form", wish: "show-form", label: "Form" },
  { view: "text", wish: "show-text", label: "Markdown" },
] as const;

const never = () => () => {};

/** A case being written up: form and Markdown of the same case, checked as one types, kept in the browser until it is saved. */
export function WriteUp({ initial, choices }: Readonly<{ initial: Draft; choices: Choices }>) {
  const [answer, send, isSending] = useActionState(writeUp, initial);
  const box = useRef<HTMLFormElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const writing = useDraft(answer, box);
  const isAwake = useSyncExternalStore(
    never,
    () => true,
    () => false,
  );
  const { draft, problems, broughtBack } = writing;

  // A save or check that found faults leads there, wherever on the page it was asked for.
  useEffect(() => {
    if (answer.asked) list.current?.focus();
  }, [answer]);

  function submit(event: React.SubmitEvent<HTMLFormElement>) {
    // Sent by hand, because a form that is sent by its action is emptied afterwards.
    event.preventDefault();
    const button = event.nativeEvent.submitter;
    const wish = button instanceof HTMLButtonElement ? button.value : "check";
    if (wish === "more-steps") return writing.addSteps();
    if (wish === "more-causes") return writing.addCauses();
    const data = new FormData(event.currentTarget);
    data.set("wish", wish);
    startTransition(() => send(data));
  }

  return (
    <form ref={box} action={send} onSubmit={submit} noValidate className={styles.write} aria-busy={isSending}>
      {/* The first button is the one that the Enter key presses. */}
      <button type="submit" name="wish" value="check" className="heard" tabIndex={-1} aria-hidden="true">
        Check it
      </button>
      <input type="hidden" name="view" value={draft.view} />
      {broughtBack ? (
        <p className={styles.back} role="status">
          What was typed here before is back.
          <button type="button" className={controls.word} onClick={() => writing.startAfresh(initial)}>
            Start afresh instead
          </button>
        </p>
      ) : null}
      <div className={styles.bar}>
        <div className={controls.either} role="group" aria-label="Write it as">
          {views.map(({ view, wish, label }) => (
            <button key={view} type="submit" name="wish" value={wish} aria-pressed={draft.view === view}>
              {label}
            </button>
          ))}
        </div>
        <p className={styles.standing}>{standing(problems.length, isAwake)}</p>
      </div>
      {draft.asked || draft.view === "text" ? (
        <ProblemList ref={list} view={draft.view} problems={problems} />
      ) : null}
      <fieldset disabled={isSending} className={styles.fields}>
        {draft.view === "form" ? (
          <FormView writing={writing} choices={choices} isAwake={isAwake} />
        ) : (
          <TextView text={draft.text} onText={writing.setText} isWrong={problems.length > 0} />
        )}
        <div className={styles.acts}>
          <button type="submit" name="wish" value="save" className={controls.lead}>
            Save
          </button>
          <button type="submit" name="wish" value="check" className={controls.plain}>
            Check it
          </button>
        </div>
      </fieldset>
    </form>
  );
}

function standing(count: number, isAwake: boolean): string {
  if (!isAwake) return "";
  return count === 0
    ? "Kept in this browser as you type."
    : `${count} still to be put right; kept in this browser as you type.`;
}
