"use client";

import { useEffect } from "react";
import { forgetDrafts } from "@/app/add/_components/keptDraft";

/** The draft of a case that has been saved need not be kept in the browser any longer. */
export function ForgetDraft({ id }: Readonly<{ id: string }>) {
  useEffect(() => forgetDrafts(id), [id]);
  return null;
}
