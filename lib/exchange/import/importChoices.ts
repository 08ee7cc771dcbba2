import { z } from "zod";
import { decimalMarks } from "../cells/amountReadings";
import { dayOrders } from "../cells/dayReadings";

/** What somebody said about a file of old jobs where it does not tell by itself. */
export const importChoicesSchema = z.object({
  /** The order of day, month and year; where it is not said only dates that leave no choice are read. */
  dates: z.enum(dayOrders).optional(),
  decimal: z.enum(decimalMarks).optional(),
  /** What becomes of a finished job that lacks a known cause, an outcome, minutes or the day it was closed. */
  incomplete: z.enum(["refuse", "open"]).default("refuse"),
});
export type ImportChoices = z.infer<typeof importChoicesSchema>;
