"use client";

import { type ReactNode, use } from "react";
import { TypedContext } from "./TypedContext";

type Props = Readonly<{
  summary: string;
  className?: string | undefined;
  /** A field and its value by which it was this part that was sent; default any sending. */
  sentBy?: Readonly<{ name: string; value: string }>;
  children: ReactNode;
}>;

/** A part of a form that is shut until it is asked for, or until what it sent was refused. */
export function FormFold({ summary, className, sentBy, children }: Props) {
  const { typed, isRefused } = use(TypedContext);
  const isOpen = isRefused && (sentBy === undefined || typed[sentBy.name] === sentBy.value);
  return (
    <details open={isOpen}>
      <summary className={className}>{summary}</summary>
      {children}
    </details>
  );
}
