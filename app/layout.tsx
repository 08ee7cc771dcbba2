import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import { Header } from "./_components/Header";
import { readLight } from "./_components/readLight";
import { atkinson, besley } from "./fonts/faces";
import "./tokens.css";
import "./base.css";

export const metadata: Metadata = {
  title: { default: "Bench · Benchlore", template: "%s · Benchlore" },
  description: "What came in, what it is likely to be, what to check next, and what not to do yet.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1, colorScheme: "light dark" };

/** The frame of every page: the chosen light, the two faces, the head. */
export default async function RootLayout({ children }: Readonly<{ children: ReactNode }>) {
  const light = await readLight();
  return (
    <html lang="en" data-theme={light} className={`${besley.variable} ${atkinson.variable}`}>
      <body>
        <Header light={light} />
        {children}
      </body>
    </html>
  );
}
