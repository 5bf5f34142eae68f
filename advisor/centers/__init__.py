"""The shop-made drive center: what is asked, the cutter and depth chosen, the answer, the moves, the making of it."""
