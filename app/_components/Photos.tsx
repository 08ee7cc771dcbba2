import type { ReactNode } from "react";
import { type Photo, thumbOf } from "@/lib/casebook/photos/photo";
import styles from "./Photos.module.css";

type Props = Readonly<{
  /** The case that they belong to. */
  id: string;
  photos: readonly Photo[];
  /** `strip` for the small size, each leading to the large one; `paper` for printing. */
  as?: "strip" | "paper";
  /** What stands under each. */
  under?: (photo: Photo, at: number) => ReactNode;
}>;

/** Photos of an instrument as it came in, with what they show. */
export function Photos({ id, photos, as = "strip", under }: Props) {
  return (
    <ul className={styles.photos} data-as={as}>
      {photos.map((photo, at) => {
        const { file, caption } = photo;
        const place = `/photos/${id}/`;
        const alt = caption ?? `State on arrival, photo ${at + 1} of ${photos.length}, not described yet`;
        return (
          <li key={file}>
            <figure>
              {as === "strip" ? (
                <a href={`${place}${file}`}>
                  <img src={`${place}${thumbOf(file)}`} alt={alt} loading="lazy" />
                </a>
              ) : (
                // What it shows stands under it.
                <img src={`${place}${file}`} alt={`On arrival, view ${at + 1}`} />
              )}
              <figcaption>
                {at + 1}. {caption ?? "Not described yet"}
              </figcaption>
            </figure>
            {under?.(photo, at)}
          </li>
        );
      })}
    </ul>
  );
}
