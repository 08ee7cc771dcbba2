import { getShop } from "@/app/_data/shop";
import { exportCasebook, exportFormats, isExportFormat } from "@/lib/exchange/copies/exportCasebook";

type Context = Readonly<{ params: Promise<{ format: string }> }>;

/** A copy of the casebook to keep, made piece by piece as the browser takes it. */
export async function GET(_: Request, { params }: Context): Promise<Response> {
  const { format } = await params;
  if (!isExportFormat(format)) return new Response("A copy is csv, json or zip.\n", { status: 404 });
  const { folders, casebook } = await getShop();
  const pieces = exportCasebook(format, folders, casebook).pieces[Symbol.iterator]();
  const body = new ReadableStream<Uint8Array>({
    pull: (controller) => {
      const { done, value } = pieces.next();
      if (done) controller.close();
      else controller.enqueue(value);
    },
  });
  const name = `casebook-${new Date().toISOString().slice(0, 10)}.${format}`;
  const headers = {
    "Content-Type": exportFormats[format],
    "Content-Disposition": `attachment; filename="${name}"`,
    "Cache-Control": "no-store",
  };
  return new Response(body, { headers });
}
