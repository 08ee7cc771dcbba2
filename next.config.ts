import { fileURLToPath } from "node:url";
import type { NextConfig } from "next";

const nextConfig: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  devIndicators: false,
  // Photos are served as they are by a route of ours; the image server and every image host stay off.
  images: { unoptimized: true, remotePatterns: [] },
  // The first two reach for Node's own modules at run time, the others are large and drawn with on the server alone: all are
  // loaded from node_modules and not bundled.
  serverExternalPackages: ["chokidar", "gray-matter", "@observablehq/plot", "linkedom"],
  // A lock file in a folder above must not move the root.
  turbopack: { root: fileURLToPath(new URL(".", import.meta.url)) },
  // A table of old jobs goes to and fro with the page that it is shown on; what is longer is refused before it is read.
  experimental: { serverActions: { bodySizeLimit: "9mb" } },
};

export default nextConfig;
