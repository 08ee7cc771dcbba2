import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { contentFolders } from "@/lib/casebook/files/contentFolder";

const none = () => false;
const all = () => true;

describe("the content's folders", () => {
  it("lie in the working folder unless told otherwise", () => {
    expect(contentFolders({}, all)).toEqual({
      content: resolve("content"),
      vocabulary: resolve("content/vocabulary"),
      cases: resolve("content/cases"),
      lessons: resolve("content/lessons"),
      learners: resolve("content/learners"),
    });
    expect(contentFolders({ BENCHLORE_CONTENT: "" }, all).content).toBe(resolve("content"));
  });

  it("lie where the setting says", () => {
    expect(contentFolders({ BENCHLORE_CONTENT: "/srv/shop" }, all)).toEqual({
      content: "/srv/shop",
      vocabulary: "/srv/shop/vocabulary",
      cases: "/srv/shop/cases",
      lessons: "/srv/shop/lessons",
      learners: "/srv/shop/learners",
    });
  });

  it("borrow the vocabulary that comes along where the casebook has none of its own", () => {
    expect(contentFolders({ BENCHLORE_CONTENT: "/srv/shop" }, none)).toMatchObject({
      vocabulary: resolve("content/vocabulary"),
      cases: "/srv/shop/cases",
    });
  });
});
