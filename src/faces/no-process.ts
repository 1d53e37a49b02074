/** Nothing: what commander has in place of `node:child_process` when bundled. It would start verbs that are programs of their own. */
export {}
