// Addresses that carry a plan. No DOM here.
// In the pocket edition all pages share one address, and a page's name stands before the plan: #compare/v=1&…

/** Whether a fragment is one of ours and not the name of a place on the page. */
export function carriesPlan(fragment) {
  return /^#?(?:[\w-]+\/)?v=/u.test(fragment);
}

/** The plan's part of an address or of a fragment. */
export function planIn(address) {
  return address.replace(/^[^#]*#(?:[\w-]+\/)?/u, "");
}

/** The address with this plan in place of the one it has. */
export function withPlan(address, plan) {
  const [bare] = /^[^#]*(?:#[\w-]+\/)?/u.exec(address);
  return plan === "" ? bare : `${bare}${bare.includes("#") ? "" : "#"}${plan}`;
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
