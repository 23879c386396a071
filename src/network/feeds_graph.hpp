// SPDX-License-Identifier: MIT
#pragma once
#include <memory>
#include <span>
#include <vector>

#include "network/network.hpp"

namespace doorcard {

/// The graph behind Network: vertices are things, edges are feeds. Boost.Graph lives in its .cpp alone.
class FeedsGraph {
public:
    /// `count` things of each kind that is a vertex, in the order source, panel, breaker, circuit, outlet, load.
    /// `back_feeds` are the ways in which a source comes in through a breaker beside what feeds the panel: they close a
    /// loop, so the topological order is that of `feeds` alone.
    FeedsGraph(const std::vector<std::size_t>& counts, const std::vector<Feed>& feeds,
               const std::vector<Feed>& back_feeds);
    ~FeedsGraph();
    FeedsGraph(const FeedsGraph&) = delete;
    FeedsGraph& operator=(const FeedsGraph&) = delete;

    /// Things, each before all that it feeds; empty where the feeds close a loop (the reader refuses such files).
    const std::vector<Thing>& from_the_top() const { return order_; }
    std::vector<Thing> downstream(std::span<const Thing> from, std::span<const Thing> opened) const;
    std::vector<Thing> upstream(Thing) const;

private:
    struct Graph;
    std::size_t vertex(Thing) const;
    Thing thing(std::size_t vertex) const;
    std::vector<Thing> things_where(const std::vector<bool>& reached) const;

    std::vector<std::size_t> first_;  // first vertex of each kind
    std::unique_ptr<Graph> graph_;
    std::vector<Thing> order_;
};

}  // namespace doorcard
