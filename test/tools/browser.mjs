// A headless Chromium for tests and pictures. The binary comes inside a registry package; it is unpacked once into a folder that carries its
// version, with a font set-up of our own, so that a bare machine draws text. BATTERBOARD_CHROMIUM names another binary to use instead.
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium as playwright } from "playwright-core";

const top = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const version = JSON.parse(readFileSync(join(top, "node_modules/@sparticuz/chromium/package.json"), "utf8")).version;
const home = join(top, "node_modules", ".cache", `chromium-${version}`);

async function unpack() {
  if (existsSync(join(home, "ready"))) return;
  const staging = `${home}.${process.pid}`;
  mkdirSync(staging, { recursive: true });
  const kept = process.env.TMPDIR;
  process.env.TMPDIR = staging;
  process.env.AWS_LAMBDA_JS_RUNTIME ??= "nodejs20.x";
  try {
    const { default: packaged } = await import("@sparticuz/chromium");
    await packaged.executablePath();
  } finally {
    if (kept === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = kept;
  }
  writeFileSync(
    join(staging, "fonts.conf"),
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${join(home, "fonts")}</dir><dir>/usr/share/fonts</dir><cachedir>${join(home, "font-cache")}</cachedir></fontconfig>`,
  );
  writeFileSync(join(staging, "ready"), version);
  try {
    renameSync(staging, home);
  } catch {
    // Another process was first; its copy is as good.
    rmSync(staging, { recursive: true, force: true });
  }
}

function systemBrowser() {
  return ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"].find(existsSync);
}

/** Starts the browser; the caller closes it. */
export async function launch() {
  const args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--force-color-profile=srgb"];
  const env = { ...process.env, LANG: "en_US.UTF-8" };
  const named = process.env.BATTERBOARD_CHROMIUM;
  if (named) return playwright.launch({ executablePath: named, args, env });
  if (process.platform !== "linux" || process.arch !== "x64") {
    const found = systemBrowser();
    if (!found) throw new Error("No Chromium for this machine: install one and name it in BATTERBOARD_CHROMIUM.");
    return playwright.launch({ executablePath: found, args, env });
  }
  await unpack();
  return playwright.launch({
    executablePath: join(home, "chromium"),
    args,
    env: {
      ...env,
      FONTCONFIG_FILE: join(home, "fonts.conf"),
      LD_LIBRARY_PATH: [join(home, "al2023", "lib"), process.env.LD_LIBRARY_PATH].filter(Boolean).join(":"),
    },
  });
}
