import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readUnit } from "@/app/_components/readUnit";
import { getSheet } from "@/app/_data/getSheet";
import { getSettings } from "@/app/_data/settings";
import { getShop } from "@/app/_data/shop";
import { JobSheet } from "@/app/_print/JobSheet";
import { PrintTools } from "@/app/_print/PrintTools";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";

export const metadata: Metadata = { title: "Job sheet" };

type Props = Readonly<{ params: Promise<{ id: string }> }>;

/** A job in hand, for the paper that goes with the instrument. */
export default async function JobSheetPage({ params }: Props) {
  const found = await getSheet((await params).id);
  if (!found?.kase) notFound();
  const { kase } = found;
  const { vocabulary } = await getShop();
  const { settings } = await getSettings();
  return (
    <main className="page" id="main">
      <PrintTools back={`/sheets/${kase.id}`} label={`Back to sheet ${kase.id}`} />
      <JobSheet
        kase={kase}
        vocabulary={vocabulary}
        shop={settings?.name}
        lengths={lengthWords(await readUnit())}
      />
    </main>
  );
}
