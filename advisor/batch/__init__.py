"""Every case in a folder, answered at once by several processes."""
