"use client";

import { startTransition, useActionState, useEffect, useRef, useState } from "react";
import controls from "@/app/_components/controls.module.css";
import { largestTableFile, tooLong } from "@/lib/exchange/import/longestTable";
import { bringIn } from "../actions";
import styles from "./BringIn.module.css";
import { nothingYet } from "./bringInState";
import { ChooseTable } from "./ChooseTable";
import { MatchColumns } from "./MatchColumns";
import { Outcome } from "./Outcome";
import { Taking } from "./Taking";
import { TryOut } from "./TryOut";
import { useTaking } from "./useTaking";

/** A table of old jobs on its way in: chosen, matched, tried, taken in. Nothing is written before the last step. */
export function BringIn() {
  const [state, send, isSending] = useActionState(bringIn, nothingYet);
  const taking = useTaking();
  const news = useRef<HTMLDivElement>(null);
  // A file that the server would not even read is told of here.
  const [ownFault, setOwnFault] = useState("");
  const { draft } = state;
  const fault = ownFault || draft.fault;
  const taken = taking.progress.isOver ? taking.progress.taken : state.taken;
  const isBusy = isSending || taking.progress.isRunning;

  // What came of a step is where one reads on, wherever its button stood.
  useEffect(() => {
    if (state !== nothingYet) news.current?.focus();
  }, [state, taking.progress.isOver]);

  function submit(event: React.SubmitEvent<HTMLFormElement>) {
    // Sent by hand, because a form that is sent by its action is emptied afterwards.
    event.preventDefault();
    const button = event.nativeEvent.submitter;
    const data = new FormData(event.currentTarget, button);
    if (button instanceof HTMLButtonElement && button.value === "take") {
      taking.start(draft.source, data);
      return;
    }
    taking.forget();
    const file = data.get("file");
    const isTooLong = file instanceof File && file.size > largestTableFile;
    setOwnFault(isTooLong ? tooLong : "");
    if (isTooLong) return;
    startTransition(() => send(data));
  }

  const chosen = draft.source && `${draft.source.name} ${draft.source.text.length} ${draft.rowCount}`;
  return (
    <form action={send} onSubmit={submit} noValidate className={styles.form} aria-busy={isBusy}>
      <fieldset disabled={isBusy} className={styles.plain}>
        <ChooseTable draft={draft} />
        {fault ? (
          <p ref={news} tabIndex={-1} role="alert" className={styles.wrong}>
            {fault}
          </p>
        ) : null}
        {chosen ? (
          <div key={chosen}>
            <div ref={draft.plan || taken ? undefined : news} tabIndex={-1}>
              <MatchColumns draft={draft} />
            </div>
            <p className={styles.act}>
              <button
                type="submit"
                name="wish"
                value="try"
                className={draft.plan ? controls.plain : controls.lead}
              >
                {draft.plan ? "Try again" : "Try it, writing nothing"}
              </button>
            </p>
          </div>
        ) : null}
      </fieldset>
      {draft.plan && !taken && !taking.progress.isRunning ? (
        <div ref={news} tabIndex={-1}>
          <TryOut plan={draft.plan} isBusy={isBusy} />
        </div>
      ) : null}
      {taking.progress.isRunning ? <Taking progress={taking.progress} onStop={taking.stop} /> : null}
      {taken && draft.plan ? (
        <div ref={news} tabIndex={-1}>
          <Outcome taken={taken} plan={draft.plan} cutShort={taking.progress.cutShort} />
        </div>
      ) : null}
    </form>
  );
}
