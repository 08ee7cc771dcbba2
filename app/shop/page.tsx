import type { Metadata } from "next";
import Link from "next/link";
import { formatMoney } from "../_components/formatMoney";
import { StateNote } from "../_components/StateNote";
import { getSettings } from "../_data/settings";
import { SettingsForm } from "./_components/SettingsForm";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "What the shop reckons with" };

type Props = Readonly<{
  searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}>;

/** What the shop reckons with when it quotes: what an hour costs, and what is to be left. */
export default async function ShopPage({ searchParams }: Props) {
  const { settings, problems } = await getSettings();
  const { kept } = await searchParams;
  return (
    <main className="page" id="main">
      <h1>What the shop reckons with</h1>
      {kept === undefined ? null : <p role="status">Kept. The next quote is proposed by it.</p>}
      {problems.length > 0 ? (
        <StateNote level={2} tone="fail" title="The settings file cannot be read as it stands.">
          {problems.map(({ file, line, field, received, expected }) => (
            <p key={`${field} ${received}`}>
              {file}, line {line}
              {field ? `, ${field}` : ""}: found {received}; write {expected}.
            </p>
          ))}
        </StateNote>
      ) : null}
      <p className={`soft ${styles.where}`}>
        It stands in <code>shop.yaml</code> in the content folder. Prices are proposed from it on the{" "}
        <Link href="/sheets">sheets</Link>.
        {settings
          ? ` A job that takes just as long as jobs like it do on average comes to ${formatMoney(
              settings.hourCost / (1 - settings.margin / 100),
            )} an hour.`
          : " Until it is filled in no price is proposed."}
      </p>
      <SettingsForm
        values={{
          name: settings?.name ?? "",
          hourCost: settings ? String(settings.hourCost) : "",
          margin: settings ? String(settings.margin) : "",
        }}
      />
    </main>
  );
}
