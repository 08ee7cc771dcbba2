/**
 * What a spreadsheet may take for the beginning of a formula, wherever quotes or blanks stand before it: = + - @, the same
 * signs at full width, a tab, a carriage return, a line feed, a zero byte.
 *
 * Source: OWASP, CSV Injection; CWE-1236; OWASP ASVS 5.0, requirement 1.2.10.
 */
export const formulaStart = /^'*(?:[\n\0]|\s*[\t\r=+\-@\uFF1D\uFF0B\uFF0D\uFF20])/;
