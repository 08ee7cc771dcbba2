import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import { getShop } from "@/app/_data/shop";
import styles from "../../_components/Entry.module.css";
import { EntryHead } from "../../_components/EntryHead";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { vocabulary } = await getShop();
  return { title: labelOf(vocabulary.cautions, (await params).id) };
}

/** A caution: what can hurt, what to do about it, whose word goes first, and the work that it belongs to. */
export default async function CautionPage({ params }: Props) {
  const { vocabulary } = await getShop();
  const caution = vocabulary.cautions.get((await params).id);
  if (!caution) notFound();
  const work = [
    ...[...vocabulary.repairs.values()].map((repair) => ({
      ...repair,
      href: `/handbook/repairs/${repair.id}`,
    })),
    ...[...vocabulary.checks.values()].map((check) => ({ ...check, href: `/handbook/checks/${check.id}` })),
  ].filter(({ cautions }) => cautions.includes(caution.id));
  return (
    <main className="page" id="main">
      <EntryHead kind="Caution" anchor="cautions" title={caution.label} synonyms={caution.synonyms} />
      <div className={styles.two}>
        <div>
          <Section title="What can hurt">
            <p className={styles.prose}>{caution.hazard}</p>
          </Section>
          <Section title="What to do about it">
            <p className={styles.prose}>{caution.guard}</p>
          </Section>
          <Section title="Whose word goes first">
            <p className={styles.prose}>
              {caution.defersTo}. Where they and this page differ, this page is wrong.
            </p>
          </Section>
          <p className={styles.source}>Source: {caution.source}.</p>
        </div>
        <Section title="The work it belongs to">
          {work.length === 0 ? <p className="small soft">None in this handbook.</p> : null}
          <ul className={styles.list}>
            {work.map(({ href, label }) => (
              <li key={href}>
                <Link href={href} prefetch={false}>
                  {label}
                </Link>
              </li>
            ))}
          </ul>
        </Section>
      </div>
    </main>
  );
}
