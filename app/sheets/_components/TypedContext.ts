"use client";

import { createContext } from "react";

/** The form that a field stands in, what was typed in it when it was last sent and came back, and whether it was refused. */
export const TypedContext = createContext<
  Readonly<{ form: string; typed: Readonly<Record<string, string>>; isRefused: boolean }>
>({ form: "", typed: {}, isRefused: false });
