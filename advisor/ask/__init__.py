"""An interview at the keyboard that ends in a case file and an answer."""
