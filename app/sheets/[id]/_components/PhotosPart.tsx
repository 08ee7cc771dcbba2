import controls from "@/app/_components/controls.module.css";
import { Photos } from "@/app/_components/Photos";
import { FormFold } from "@/app/sheets/_components/FormFold";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import fields from "@/app/sheets/_components/SheetForm.module.css";
import { TypedField } from "@/app/sheets/_components/TypedField";
import { takePhotosIn } from "@/app/sheets/actions";
import type { Case } from "@/lib/casebook/caseFile";
import { mostSentBytes } from "@/lib/safety/mostSentBytes";
import { PhotoField } from "./PhotoField";
import styles from "./PhotosPart.module.css";

type Props = Readonly<{ sheet: SheetVersion; kase: Case }>;

/** Photos of the state on arrival: those there are, each described or taken off, and more of them. */
export function PhotosPart({ sheet, kase: { id, photos = [] } }: Props) {
  return (
    <div className={styles.part}>
      {photos.length > 0 ? (
        <Photos
          id={id}
          photos={photos}
          under={({ file, caption }, at) => (
            // The words to open stand within the form, so that what it answers is never folded away.
            <div className={`${styles.under} unprinted`}>
              <SheetForm sheet={sheet} wish="caption" name={`caption-${file}`}>
                <input type="hidden" name="photo" value={file} />
                <FormFold summary={caption ? "Reword" : "Describe"} className={controls.opens}>
                  <TypedField name="caption" label={`What photo ${at + 1} shows`} value={caption ?? ""} />
                  <p className={fields.buttons}>
                    <button type="submit" className={controls.plain}>
                      Keep these words
                    </button>
                  </p>
                </FormFold>
              </SheetForm>
              <SheetForm sheet={sheet} wish="photo-off" name={`off-${file}`}>
                <input type="hidden" name="photo" value={file} />
                <button type="submit" className={controls.word}>
                  Take off<span className="heard"> photo {at + 1}</span>
                </button>
              </SheetForm>
            </div>
          )}
        />
      ) : null}
      <SheetForm sheet={sheet} wish="photos" name="photos" act={takePhotosIn} className="unprinted">
        <FormFold summary="Add photos of the state on arrival" className={controls.opens}>
          <div className={styles.add}>
            <PhotoField mostBytes={mostSentBytes} />
            <TypedField name="caption" label="What they show, if you like" />
            <p className={fields.buttons}>
              <button type="submit" className={controls.lead}>
                Keep the photos
              </button>
            </p>
          </div>
        </FormFold>
      </SheetForm>
    </div>
  );
}
