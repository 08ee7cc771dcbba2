import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import { boreMap } from "@/lib/gauging/bores/boreMap";
import { boreWords } from "@/lib/gauging/bores/boreWords";
import { taperWords } from "@/lib/gauging/bores/taperWords";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";
import { readSize } from "@/lib/gauging/lengths/readSize";
import type { ShownUnit } from "../_components/readUnit";
import { BoreDrawing } from "./BoreDrawing";
import { boreScale } from "./boreLayout";
import { DownTheBore } from "./DownTheBore";
import { Numbers } from "./Numbers";
import { sectionRows } from "./numberRows";
import part from "./Part.module.css";

type Props = Readonly<{
  /** Sections of one bore. */
  diameters: ReadingsInput["diameters"];
  /** The diameter of what goes into it, as it was written. */
  piston?: string | undefined;
  unit: ShownUnit;
}>;

/** What diameters of one bore come to: every depth drawn to one exaggerated scale, and the bore along its depth. */
export function BoreMeans({ diameters, piston, unit }: Props) {
  const lengths = lengthWords(unit);
  const pistonMm = piston === undefined ? undefined : mmOf(piston, "diameter");
  const read = diameters.map(({ depth, readings }) => ({
    depthMm: depth === undefined ? null : (mmOf(depth, "depth") ?? null),
    readings: readings.flatMap(({ angle, diameter }) => {
      const diameterMm = mmOf(diameter, "diameter");
      return diameterMm === undefined ? [] : [{ angleDeg: angle, diameterMm }];
    }),
  }));
  const { sections, taper } = boreMap(read);
  const scale = boreScale(
    sections,
    read.map(({ readings }) => readings),
    unit,
  );
  const notes = new Set(sections.flatMap(({ oval }) => (oval.kind === "fitted" ? oval.notes : [])));
  return (
    <>
      <div className={part.sections}>
        {sections.map((section, index) => {
          const title = `${diameters[index]?.part ?? "Bore"}${
            section.depthMm === null ? "" : ` at ${lengths.depth(section.depthMm)}`
          }`;
          const words = boreWords(section, lengths);
          return (
            <article key={index}>
              <h3>{title}</h3>
              {scale ? (
                <BoreDrawing
                  title={title}
                  section={section}
                  readings={read[index]?.readings ?? []}
                  scale={scale}
                  lengths={lengths}
                />
              ) : null}
              {scale && section.oval.kind === "fitted" ? (
                <p className="small soft">Shape drawn {scale.exaggeration} times as strong as its size.</p>
              ) : null}
              <ul className={part.means}>
                {[words.press, words.oval, words.dent].map((sentence) =>
                  sentence ? <li key={sentence}>{sentence}</li> : null,
                )}
              </ul>
              <Numbers caption="The same in figures" rows={sectionRows(section)} />
            </article>
          );
        })}
        {diameters.length > 1 ? (
          <article>
            <h3>Down the bore</h3>
            <DownTheBore sections={sections} pistonMm={pistonMm} unit={unit} lengths={lengths} />
            <p className={part.means}>{taperWords(taper, lengths)}</p>
          </article>
        ) : null}
      </div>
      {[...notes].map((note) => (
        <p key={note} className={part.limit}>
          {note}
        </p>
      ))}
    </>
  );
}

function mmOf(text: string, kind: "diameter" | "depth"): number | undefined {
  const read = readSize(text, kind);
  return read.kind === "length" ? read.mm : undefined;
}
