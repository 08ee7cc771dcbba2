import { parseHTML } from "linkedom";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { drawPlot } from "@/app/patterns/_components/drawPlot";
import { type ParetoBar, paretoPlot } from "@/app/patterns/_components/paretoPlot";
import { svgToReact } from "@/app/patterns/_components/svgToReact";

function render(svg: string): string {
  const { document } = parseHTML(`<html><body>${svg}</body></html>`);
  const drawn = document.querySelector("svg");
  if (!drawn) throw new Error("the test must give an SVG; it does not");
  return renderToStaticMarkup(svgToReact(drawn));
}

describe("a drawn SVG taken over into React", () => {
  it("has its inline styles as presentation attributes, and no style element", () => {
    expect(
      render(
        '<svg><style>rect { fill: red }</style><rect style="fill: red; stroke-width: 2" x="1"></rect></svg>',
      ),
    ).toBe('<svg><rect fill="red" stroke-width="2" x="1"></rect></svg>');
  });

  it("names a link by the title of what it holds", () => {
    expect(render('<svg><a href="/x"><rect><title>Pads: 3 jobs</title></rect></a></svg>')).toBe(
      '<svg><a href="/x" aria-label="Pads: 3 jobs"><rect><title>Pads: 3 jobs</title></rect></a></svg>',
    );
  });
});

describe("a plot", () => {
  const bar = (label: string, count: number, running: number): ParetoBar => ({
    value: label,
    label,
    count,
    running,
    href: `/casebook?maker=${encodeURIComponent(label)}`,
  });
  const drawn = renderToStaticMarkup(
    drawPlot(paretoPlot([bar("Marrowby", 3, 0.75), bar("<script>alert(1)</script>", 1, 1)], 400)),
  );

  it("escapes whatever words it holds", () => {
    expect(drawn).not.toContain("<script");
    expect(drawn).toContain("&lt;script&gt;alert(1)&lt;/script&gt;: 1 job");
  });

  it("carries no style, draws bars as long as their counts and the running share in a lane of its own", () => {
    expect(drawn).not.toMatch(/<style| style=/);
    const widths = [...drawn.matchAll(/<rect[^>]* width="([\d.]+)"/g)].map(([, width]) => Number(width));
    // Two bars and two rows to press; 400 wide less margins of 2 and 24 leaves 374, of which the longest bar takes .56.
    expect(widths.map(Math.round)).toEqual([209, 70, 374, 374]);
    const places = [...drawn.matchAll(/<path[^>]* transform="translate\(([\d.]+),/g)].map(([, x]) =>
      Number(x),
    );
    // Three quarters of the way from .66 to 1 of 374, and all of it, each past the margin of 2.
    expect(places.slice(-2).map(Math.round)).toEqual([344, 376]);
  });
});
