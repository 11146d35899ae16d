// The icons of the installed app as pictures, from the one drawn as SVG: `node test/tools/icons.mjs`. The round one leaves the edge that a
// machine may cut off (a fifth of the width all told).
import { readFileSync, writeFileSync } from "node:fs";
import { launch } from "./browser.mjs";

const folder = "src/app/public";
const drawn = readFileSync(`${folder}/icon.svg`, "utf8");
const browser = await launch();
try {
  for (const [name, size, scale] of [
    ["icon-180", 180, 1],
    ["icon-192", 192, 1],
    ["icon-512", 512, 1],
    ["icon-round-512", 512, 0.76],
  ]) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(
      `<body style="margin:0;display:grid;place-items:center;height:100vh;background:#fdfcf8"><div style="width:${100 * scale}vw">${drawn}</div></body>`,
    );
    writeFileSync(`${folder}/${name}.png`, await page.screenshot());
    await page.close();
  }
} finally {
  await browser.close();
}
