import { fileURLToPath } from "node:url";
import type { NextConfig } from "next";

const nextConfig: NextConfig = {
  reactStrictMode: true,
  poweredByHeader: false,
  devIndicators: false,
  // Photos are served as they are by a route of ours; the image server and every image host stay off.
  images: { unoptimized: true, remotePatterns: [] },
  // The first three reach for Node's own modules at run time, the others are large and drawn with on the server alone: all are
  // loaded from node_modules and not bundled.
  serverExternalPackages: ["file-type", "gray-matter", "sharp", "@observablehq/plot", "linkedom"],
  // A lock file in a folder above must not move the root.
  turbopack: { root: fileURLToPath(new URL(".", import.meta.url)) },
  // Photos come with a form, and a table of old jobs goes to and fro with the page that it is shown on. Both limits lie over
  // what the proxy lets through, which refuses in words.
  experimental: { serverActions: { bodySizeLimit: "64mb" }, proxyClientMaxBodySize: "64mb" },
};

export default nextConfig;
