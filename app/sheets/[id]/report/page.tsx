import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { getSheet } from "@/app/_data/getSheet";
import { getSettings } from "@/app/_data/settings";
import { getShop } from "@/app/_data/shop";
import { CustomerReport } from "@/app/_print/CustomerReport";
import { PrintTools } from "@/app/_print/PrintTools";
import { consultSheet } from "@/lib/consult/sheet/consultSheet";

export const metadata: Metadata = { title: "Customer report" };

type Props = Readonly<{ params: Promise<{ id: string }> }>;

/** What the customer is told of a job in hand. */
export default async function ReportPage({ params }: Props) {
  const found = await getSheet((await params).id);
  if (!found?.kase) notFound();
  const { kase } = found;
  const { bench, vocabulary } = await getShop();
  const { settings } = await getSettings();
  return (
    <main className="page" id="main">
      <PrintTools back={`/sheets/${kase.id}`} label={`Back to sheet ${kase.id}`} />
      <CustomerReport
        kase={kase}
        vocabulary={vocabulary}
        shop={settings?.name}
        suspected={consultSheet(kase, bench).causes[0]?.id}
      />
    </main>
  );
}
