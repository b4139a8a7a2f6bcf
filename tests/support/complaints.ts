// What a page complained about: errors and warnings in its console, exceptions that nothing caught, breaches of its policy.

import type { Page } from "playwright-core";

/** A list that grows while the page is open. */
export function complaintsOf(page: Page): string[] {
  const complaints: string[] = [];
  page.on("console", (message) => {
    const words = message.text();
    if (["error", "warning"].includes(message.type()) && !OF_THE_DRIVER.test(words))
      complaints.push(words);
  });
  page.on("pageerror", (reason) => complaints.push(reason.message));
  return complaints;
}

/** Drawing without a graphics card, the browser reads its own canvas back, and warns itself that this is slow. */
const OF_THE_DRIVER = /GL Driver Message .*GPU stall due to ReadPixels/;
