/**
 * The text of a case file that is still to be filled in: every field that a finished case needs, with what to write beside it.
 * It does not hold until it is filled in, and is told line by line what is missing.
 *
 * @param today year-month-day
 */
export const blankCase = (id: string, today: string) => `---
id: ${id}
title:            # what to find it by, up to 120 characters
status: closed    # or open while the job lasts
instrument:       # id of an instrument, such as trumpet
maker: ""
model: ""
received: ${today}
closed: ${today}
complaint:        # the player's own words
arrival: []       # old damage, a line each
path: []          # in place of [], a line below for each step in the order in which it happened, such as
#  - { check: valve-travel, part: valve 3, found: hangs, minutes: 2 }
#  - { repair: clean-and-oil, part: valve 3, result: fixed, minutes: 10 }
causes: []        # why it did not work, a line each; role is root, contributing or brought-on, such as
#  - { cause: gummed-oil, part: valve 3, role: root }
outcome:          # fixed, improved, not-fixed or declined
minutes:          # of the whole job
lessons: []       # one plain sentence each
---

The story, if there is one.
`;
