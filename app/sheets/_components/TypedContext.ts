"use client";

import { createContext } from "react";

/** The form that a field stands in, and what was typed in it when it was last sent and came back. */
export const TypedContext = createContext<
  Readonly<{ form: string; typed: Readonly<Record<string, string>> }>
>({ form: "", typed: {} });
