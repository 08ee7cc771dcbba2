import { stringify } from "csv-stringify/sync";
import { neutralCell } from "../cells/neutralCell";
import type { RefusedRow } from "../import/importPlan";

/** Writes refused rows as a table with the headings that they came under; empty where there are none. */
export function leftRowsCsv(headings: readonly string[], rows: readonly Pick<RefusedRow, "cells">[]): string {
  if (rows.length === 0) return "";
  return stringify([headings, ...rows.map(({ cells }) => cells)].map((cells) => cells.map(neutralCell)));
}
