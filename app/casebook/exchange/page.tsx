import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { getShop } from "@/app/_data/shop";
import { BringBack } from "./_components/BringBack";
import { BringIn } from "./_components/BringIn";
import { Copies } from "./_components/Copies";

export const metadata: Metadata = { title: "Copies out, old jobs in" };

/** Copies of the casebook to take away, and old jobs to bring in, a table at a time. */
export default async function ExchangePage() {
  const { casebook } = await getShop();
  return (
    <main className="page" id="main">
      <p>
        <Link className={controls.link} href="/casebook" prefetch={false}>
          Back to the casebook
        </Link>
      </p>
      <h1>Copies out, old jobs in</h1>
      <Section title="Take a copy" aside={`${casebook.cases.size} cases and sheets`}>
        <Copies problems={casebook.problems} />
      </Section>
      <Section title="Bring a copy back" aside="a zip that was taken here or in another shop">
        <BringBack />
      </Section>
      <Section title="Bring old jobs in" aside="a job book kept as a table, a row a job">
        <BringIn />
      </Section>
    </main>
  );
}
