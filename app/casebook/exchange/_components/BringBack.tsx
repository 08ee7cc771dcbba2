"use client";

import { startTransition, useActionState, useEffect, useRef, useState } from "react";
import controls from "@/app/_components/controls.module.css";
import { noZipYet, zipTooLarge } from "@/lib/exchange/copies/zipLimits";
import { mostSentBytes } from "@/lib/safety/mostSentBytes";
import { bringZipBack } from "../actions";
import styles from "./BringIn.module.css";
import { ZipFound } from "./ZipFound";

/** A zip of a casebook on its way in: looked at first, taken in when that is wished. Nothing that is there is overwritten. */
export function BringBack() {
  const [state, send, isSending] = useActionState(bringZipBack, noZipYet);
  const news = useRef<HTMLDivElement>(null);
  // A zip that the server would not even read is told of here.
  const [ownFault, setOwnFault] = useState("");
  const fault = ownFault || state.fault;
  const { found } = state;

  useEffect(() => {
    if (state !== noZipYet) news.current?.focus();
  }, [state]);

  function submit(event: React.SubmitEvent<HTMLFormElement>) {
    // Sent by hand, because a form that is sent by its action is emptied afterwards.
    event.preventDefault();
    const data = new FormData(event.currentTarget, event.nativeEvent.submitter);
    const zip = data.get("zip");
    const isTooLarge = zip instanceof File && zip.size > mostSentBytes;
    setOwnFault(isTooLarge ? zipTooLarge : "");
    if (!isTooLarge) startTransition(() => send(data));
  }

  return (
    <form action={send} onSubmit={submit} noValidate className={styles.form} aria-busy={isSending}>
      <fieldset disabled={isSending} className={styles.plain}>
        <div className={styles.choose}>
          <div>
            <label htmlFor="zip">The zip; what is in the casebook already stays as it is</label>
            <input
              id="zip"
              name="zip"
              type="file"
              accept=".zip,application/zip"
              className={controls.field}
              onChange={() => setOwnFault("")}
            />
          </div>
          <button type="submit" name="wish" value="look" className={found ? controls.plain : controls.lead}>
            Look at it, writing nothing
          </button>
        </div>
        <div ref={news} tabIndex={-1}>
          {fault ? (
            <p role="alert" className={styles.wrong}>
              {fault}
            </p>
          ) : null}
          {isSending ? <p role="status">Going through the zip…</p> : null}
          {found && !ownFault ? <ZipFound found={found} /> : null}
        </div>
      </fieldset>
    </form>
  );
}
