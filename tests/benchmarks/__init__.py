"""What the program costs, each figure beside a floor or a peer measured in the same run."""
