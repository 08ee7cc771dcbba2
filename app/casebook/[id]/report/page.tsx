import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { getSettings } from "@/app/_data/settings";
import { getShop } from "@/app/_data/shop";
import { CustomerReport } from "@/app/_print/CustomerReport";
import { PrintTools } from "@/app/_print/PrintTools";

export const metadata: Metadata = { title: "Customer report" };

type Props = Readonly<{ params: Promise<{ id: string }> }>;

/** What the customer is told of a finished job. */
export default async function ReportPage({ params }: Props) {
  const { casebook, vocabulary } = await getShop();
  const kase = casebook.cases.get((await params).id);
  if (!kase) notFound();
  const { settings } = await getSettings();
  return (
    <main className="page" id="main">
      <PrintTools back={`/casebook/${kase.id}`} label={`Back to case ${kase.id}`} />
      <CustomerReport kase={kase} vocabulary={vocabulary} shop={settings?.name} suspected={undefined} />
    </main>
  );
}
