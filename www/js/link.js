// Addresses that carry a plan. No DOM here.

/** Whether a fragment is one of ours and not the name of a place on the page. */
export function carriesPlan(fragment) {
  return /^#?v=/u.test(fragment);
}

/**
 * The text to copy: a whole address where one is known, else the fragment alone.
 * From disk the page's own address means nothing to anybody else.
 */
export function linkText(fragment, siteAddress, here) {
  const base = siteAddress.trim() || (/^https?:/u.test(here) ? here : "");
  return base === ""
    ? { text: `#${fragment}`, whole: false }
    : { text: `${base.replace(/#.*$/su, "")}#${fragment}`, whole: true };
}

/** A fragment without the fields of these ids. */
export function withoutParts(fragment, ids) {
  return fragment.split("&").filter((part) => !ids.has(part.split("=")[0])).join("&");
}
