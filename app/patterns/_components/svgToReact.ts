import { createElement, type ReactNode } from "react";

/** The part of the DOM that is read: linkedom's nodes and a browser's alike. */
type DomNode = Readonly<{ nodeType: number; textContent: string | null; childNodes: ArrayLike<DomNode> }>;
type DomElement = DomNode &
  Readonly<{
    localName: string;
    attributes: ArrayLike<Readonly<{ name: string; value: string }>>;
  }>;

const elementType = 1;
const textType = 3;
const isElement = (node: DomNode): node is DomElement => node.nodeType === elementType;

/** Attributes that React knows under another name than their camel case. */
const renamed: Readonly<Record<string, string>> = { class: "className", "xlink:href": "href" };
const camel = (name: string) => name.replace(/-([a-z])/g, (_, letter: string) => letter.toUpperCase());
const nameFor = (name: string) =>
  renamed[name] ?? (name.startsWith("aria-") || name.startsWith("data-") ? name : camel(name));

/**
 * Takes a drawn SVG over into React, which escapes whatever words it holds. The page's policy refuses inline styles: what
 * stands in a `style` attribute becomes presentation attributes, and `style` elements are left out, so their rules must stand in
 * a CSS file. A link is named by the title of what it holds; labels of mere groups, which nothing reads out, are left out.
 *
 * @param root attributes to set on the outermost element, over its own
 */
export function svgToReact(node: DomNode, root: Readonly<Record<string, string>> = {}, key = 0): ReactNode {
  if (node.nodeType === textType) return node.textContent;
  if (!isElement(node) || node.localName === "style") return null;
  const attributes: Record<string, string | number> = { key };
  for (const { name, value } of Array.from(node.attributes)) {
    if (name === "style") Object.assign(attributes, declarations(value));
    else if (name !== "aria-label") attributes[nameFor(name)] = value;
  }
  if (node.localName === "a") attributes["aria-label"] = node.textContent ?? "";
  const children = Array.from(node.childNodes, (child, at) => svgToReact(child, {}, at));
  return createElement(
    node.localName,
    { ...attributes, ...root },
    ...(children.length > 0 ? [children] : []),
  );
}

/** `mix-blend-mode: multiply; fill: red` as attributes of these names. */
function declarations(style: string): Record<string, string> {
  return Object.fromEntries(
    style.split(";").flatMap((declaration) => {
      const at = declaration.indexOf(":");
      return at < 0
        ? []
        : [[camel(declaration.slice(0, at).trim()), declaration.slice(at + 1).trim()] as const];
    }),
  );
}
