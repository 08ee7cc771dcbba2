import { getPhoto } from "@/app/_data/getPhoto";

type Context = Readonly<{ params: Promise<{ id: string; file: string }> }>;

/** A photo's bytes never change under their name. */
const yearSeconds = 365 * 24 * 60 * 60;

/** A photo of a job in one of its sizes, found among those that the job names. */
export async function GET(_: Request, { params }: Context): Promise<Response> {
  const { id, file } = await params;
  const bytes = await getPhoto(id, file);
  if (!bytes)
    return new Response("No such photo.\n", { status: 404, headers: { "Content-Type": "text/plain" } });
  return new Response(new Uint8Array(bytes), {
    headers: {
      "Content-Type": "image/jpeg",
      "Content-Length": String(bytes.length),
      "Content-Disposition": "inline",
      "X-Content-Type-Options": "nosniff",
      "Cache-Control": `private, max-age=${yearSeconds}, immutable`,
    },
  });
}
