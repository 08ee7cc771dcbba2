import type { Metadata } from "next";
import type { SearchParams } from "@/app/_bench/benchQuery";
import { getShop } from "@/app/_data/shop";
import { openDraft } from "@/lib/consult/writeUp/openDraft";
import { benchFields } from "./_components/benchFields";
import { choicesOf } from "./_components/choices";
import { WriteUp } from "./_components/WriteUp";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Add a case" };

type Props = Readonly<{ searchParams: Promise<SearchParams> }>;

/** A finished job, or one still on the bench, written up: as a form or as the Markdown that it is kept as. */
export default async function AddPage({ searchParams }: Props) {
  const { vocabulary, casebook, consult } = await getShop();
  const today = new Date().toISOString().slice(0, 10);
  const fields = benchFields(await searchParams, consult);
  return (
    <main className="page" id="main">
      <h1>Add a case</h1>
      <p className={styles.lead}>
        One job, one file. The form and the Markdown are the same case; whatever the form does not show is
        kept as it stands in the file.
      </p>
      <WriteUp initial={openDraft(fields, casebook.cases.keys(), today)} choices={choicesOf(vocabulary)} />
    </main>
  );
}
