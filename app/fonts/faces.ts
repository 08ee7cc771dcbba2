import localFont from "next/font/local";

/** Besley, a catalogue clarendon: titles and single big readings. Its tabular zero is too thin: lining figures only. */
export const besley = localFont({
  src: "./besley-latin.woff2",
  weight: "400 900",
  display: "swap",
  variable: "--besley",
  adjustFontFallback: "Times New Roman",
});

/** Atkinson Hyperlegible Next, drawn for low sight: everything that is not a title. */
export const atkinson = localFont({
  src: "./atkinson-next-latin.woff2",
  weight: "200 800",
  display: "swap",
  variable: "--atkinson",
});
