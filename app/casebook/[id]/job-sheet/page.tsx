import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readUnit } from "@/app/_components/readUnit";
import { getSettings } from "@/app/_data/settings";
import { getShop } from "@/app/_data/shop";
import { JobSheet } from "@/app/_print/JobSheet";
import { PrintTools } from "@/app/_print/PrintTools";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";

export const metadata: Metadata = { title: "Job sheet" };

type Props = Readonly<{ params: Promise<{ id: string }> }>;

/** A finished job, for the file. */
export default async function JobSheetPage({ params }: Props) {
  const { casebook, vocabulary } = await getShop();
  const kase = casebook.cases.get((await params).id);
  if (!kase) notFound();
  const { settings } = await getSettings();
  return (
    <main className="page" id="main">
      <PrintTools back={`/casebook/${kase.id}`} label={`Back to case ${kase.id}`} />
      <JobSheet
        kase={kase}
        vocabulary={vocabulary}
        shop={settings?.name}
        lengths={lengthWords(await readUnit())}
      />
    </main>
  );
}
