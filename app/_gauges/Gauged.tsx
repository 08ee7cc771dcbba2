import type { Case } from "@/lib/casebook/caseFile";
import { gaugeReadings } from "@/lib/consult/gauge/gaugeReadings";
import { readingsOfPath } from "@/lib/consult/gauge/readingsOfPath";
import { readLeak } from "@/lib/gauging/fits/readLeak";
import type { Reader } from "@/lib/reading/reader";
import { SwapVerdict } from "../_bench/SwapVerdict";
import { partWords } from "../_components/partWords";
import type { ShownUnit } from "../_components/readUnit";
import { Section } from "../_components/Section";
import { UnitSwitch } from "../_components/UnitSwitch";
import { BoreMeans } from "./BoreMeans";
import styles from "./Gauged.module.css";
import { LeakMeans } from "./LeakMeans";
import { PlugsMean } from "./PlugsMean";

type Props = Readonly<{ kase: Pick<Case, "path" | "instrument">; reader: Reader; unit: ShownUnit }>;

/** What the gauges said on a job, drawn as on the Gauges page: of each bore the plugs tried last, its sections, the swaps, the last leak. */
export function Gauged({ kase, reader, unit }: Props) {
  const readings = readingsOfPath(kase);
  const { gauges, diameters, swaps, leaks } = readings;
  const leak = readLeak(leaks.at(-1) ?? {});
  if (gauges.length + diameters.length + swaps.length === 0 && leak.kind !== "leak") return null;
  const { vocabulary } = reader;
  const plugged = [...new Map(gauges.map((gauge) => [gauge.part, gauge])).values()];
  const bores = [...new Set(diameters.map(({ part }) => part))];
  const verdict = gaugeReadings({ ...readings, instrument: kase.instrument }, reader).swaps;
  const title = (part: string) => partWords(vocabulary, part) ?? part;
  return (
    <Section title="Gauged" id="gauged">
      <UnitSwitch unit={unit} />
      <div className={styles.parts}>
        {plugged.map((gauge) => (
          <article key={gauge.part}>
            <h3>Plugs in {title(gauge.part)}</h3>
            <PlugsMean gauge={gauge} unit={unit} />
          </article>
        ))}
        {bores.map((part) => (
          <article key={part}>
            <BoreMeans
              diameters={diameters.filter((section) => section.part === part)}
              piston={plugged.find((gauge) => gauge.part === part)?.piston?.diameter}
              unit={unit}
            />
          </article>
        ))}
        {leak.kind === "leak" ? (
          <article>
            <h3>Leak{leaks.length > 1 ? ", as it was read last" : ""}</h3>
            <LeakMeans leak={leak} />
          </article>
        ) : null}
        {verdict ? (
          <article>
            <h3>Swaps</h3>
            <SwapVerdict swap={verdict} vocabulary={vocabulary} />
          </article>
        ) : null}
      </div>
    </Section>
  );
}
