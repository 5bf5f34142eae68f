"""The page on this machine: it asks the question in a form and shows the answer; it decides nothing."""
