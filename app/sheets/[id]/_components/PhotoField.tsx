"use client";

import { type ChangeEvent, useState } from "react";
import controls from "@/app/_components/controls.module.css";
import styles from "@/app/sheets/_components/SheetForm.module.css";

const words = (bytes: number) => `${Math.ceil(bytes / 2 ** 20)} MB`;

/** Photos to be chosen, several at one go. What weighs too much to be sent is said before it is sent. */
export function PhotoField({ mostBytes }: Readonly<{ mostBytes: number }>) {
  const [tooMuch, setTooMuch] = useState("");
  function weigh({ currentTarget: field }: ChangeEvent<HTMLInputElement>) {
    const bytes = [...(field.files ?? [])].reduce((sum, { size }) => sum + size, 0);
    // Something is left for the rest of the form.
    const isTooMuch = bytes > mostBytes - 2 ** 21;
    setTooMuch(
      isTooMuch
        ? `These weigh ${words(bytes)} together, more than can be sent at one go: choose fewer. None is chosen now.`
        : "",
    );
    if (isTooMuch) field.value = "";
  }
  return (
    <div className={styles.field}>
      <label htmlFor="picture">Photos, JPEG, PNG, WebP or AVIF</label>
      <input
        id="picture"
        type="file"
        name="picture"
        multiple
        accept="image/jpeg,image/png,image/webp,image/avif,image/heic,image/heif"
        className={controls.field}
        aria-describedby="picture-hint"
        onChange={weigh}
      />
      <small id="picture-hint">
        Kept without the place and the camera that a file names. At most 12 at one go, 25 MB each.
      </small>
      {tooMuch ? (
        <p role="alert" className={styles.wrong}>
          {tooMuch}
        </p>
      ) : null}
    </div>
  );
}
