import { Fragment, jsx, jsxs } from "react/jsx-runtime";
import rehypeReact from "rehype-react";
import rehypeSanitize, { defaultSchema } from "rehype-sanitize";
import { remark } from "remark";
import remarkGfm from "remark-gfm";
import remarkRehype from "remark-rehype";
import styles from "./Story.module.css";

/** Words, lists, tables and links; no pictures from elsewhere and no form fields. */
const schema = {
  ...defaultSchema,
  tagNames:
    defaultSchema.tagNames?.filter((name) => !["img", "picture", "source", "input"].includes(name)) ?? [],
};

const reader = remark()
  .use(remarkGfm)
  .use(remarkRehype)
  .use(rehypeSanitize, schema)
  .use(rehypeReact, {
    Fragment,
    jsx,
    jsxs,
    // A style attribute would be refused by the page's own policy.
    tableCellAlignToStyle: false,
    // The page and its sections have the first two ranks.
    components: { h1: "h3", h2: "h3", h3: "h4", h4: "h5", h5: "h6" },
  });

/** The story, read from its Markdown; whatever markup it holds comes out as harmless elements. */
export function Story({ markdown }: Readonly<{ markdown: string }>) {
  return <div className={styles.story}>{reader.processSync(markdown).result}</div>;
}
